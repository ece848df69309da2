/*
 * A button that was pressed is not pressed a second time until the server has answered: an impatient second press does
 * nothing. While it waits it says so (aria-busy), and the theme shows it once the wait is long enough to be noticed.
 */
const LOOK_EVERY = 15;

function isAnswered() {
  const clients = Object.values(window.Vaadin?.Flow?.clients ?? {});
  return clients.every((client) => typeof client.isActive !== 'function' || !client.isActive());
}

function wait(button) {
  if (isAnswered()) {
    button.removeAttribute('aria-busy');
  } else {
    setTimeout(() => wait(button), LOOK_EVERY);
  }
}

document.addEventListener('click', (event) => {
  const button = event.target.closest?.('button.act');
  if (!button) {
    return;
  }
  if (button.getAttribute('aria-busy') === 'true') {
    event.preventDefault();
    event.stopImmediatePropagation();
    return;
  }
  button.setAttribute('aria-busy', 'true');
  setTimeout(() => wait(button), 0);
}, true);
