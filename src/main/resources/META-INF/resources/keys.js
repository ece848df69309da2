/*
 * The keys of the office's pages. Whatever carries data-key can be pressed by that key: a button or a link is clicked,
 * a field gets the focus. Keys are off while a field has the focus and can be switched off for good (WCAG 2.2, 2.1.4).
 *
 * A press that acts on a case (data-act inside data-case) is held back for a moment after another case came on the
 * screen: a second press of an impatient finger was meant for the case before. The page hands the mark of the case on
 * the screen over with the press, and the server compares it.
 */
const LOOK = 700;
const OFF = 'proviso-keys-off';

let shown = new Map();

function number(mark) {
  return mark.split('@')[0];
}

/* Since when each case has stood on the screen; a case that went away is forgotten. */
function look() {
  const now = performance.now();
  const seen = new Map();
  for (const part of document.querySelectorAll('[data-case]')) {
    const envelope = number(part.dataset.case);
    seen.set(envelope, shown.get(envelope) ?? now);
  }
  shown = seen;
}

function isUnseen(element) {
  const part = element.closest('[data-case]');
  if (!part) {
    return false;
  }
  look();
  const since = shown.get(number(part.dataset.case));
  return performance.now() - since < LOOK;
}

function say(words) {
  const line = document.querySelector('.said');
  if (line) {
    line.textContent = words;
    line.classList.add('spoken');
  }
}

function isTyping(event) {
  return event.composedPath().some((element) =>
    element instanceof HTMLElement
    && (element.matches('textarea, select, [contenteditable=true], [role=listbox]')
      || (element.matches('input') && !['checkbox', 'radio', 'button'].includes(element.type))));
}

function isOn() {
  return localStorage.getItem(OFF) !== 'yes';
}

function isVisible(element) {
  return element.getClientRects().length > 0 && !element.disabled && element.getAttribute('aria-disabled') !== 'true';
}

/* What lies over the page takes the keys alone. */
function topmost() {
  const sheets = document.querySelectorAll('vaadin-dialog-overlay, dialog[open]');
  return sheets.length ? sheets[sheets.length - 1] : document;
}

function holder(key) {
  const all = topmost().querySelectorAll(`[data-key="${CSS.escape(key)}"]`);
  return [...all].find(isVisible);
}

function press(element) {
  if (element.matches('input, textarea')) {
    element.focus();
    element.select();
  } else {
    element.click();
  }
}

document.addEventListener('keydown', (event) => {
  if (event.ctrlKey || event.metaKey || event.altKey || event.repeat || isTyping(event)) {
    return;
  }
  if (event.key === '?') {
    event.preventDefault();
    showKeys();
    return;
  }
  if (!isOn() || event.key.length !== 1) {
    return;
  }
  const element = holder(event.key.toLowerCase());
  if (element) {
    event.preventDefault();
    press(element);
  }
}, true);

/* The page has a base address, which a bare "#main" would lead to; the way past the menu stays on this page. */
document.addEventListener('click', (event) => {
  if (event.target.closest?.('a.skip')) {
    event.preventDefault();
    document.getElementById('main').focus();
  }
}, true);

document.addEventListener('click', (event) => {
  const act = event.target.closest?.('[data-act]');
  if (act && isUnseen(act)) {
    event.preventDefault();
    event.stopImmediatePropagation();
    say('Another envelope came on the screen. Nothing was done to it. Check it first.');
  }
}, true);

new MutationObserver(look).observe(document.documentElement, {
  subtree: true,
  childList: true,
  attributes: true,
  attributeFilter: ['data-case'],
});
look();

function words(element) {
  if (element.getAttribute('aria-label')) {
    return element.getAttribute('aria-label');
  }
  const copy = element.cloneNode(true);
  copy.querySelectorAll('[aria-hidden=true]').forEach((part) => part.remove());
  return copy.textContent.trim();
}

function line(list, key, what) {
  const term = document.createElement('dt');
  const drawn = document.createElement('kbd');
  drawn.textContent = key.toUpperCase();
  term.append(drawn);
  const meaning = document.createElement('dd');
  meaning.textContent = what;
  list.append(term, meaning);
}

/* The sheet of keys: those of this page, as they are now. */
function showKeys() {
  document.querySelector('dialog.keys')?.remove();
  const sheet = document.createElement('dialog');
  sheet.className = 'keys';
  sheet.setAttribute('aria-labelledby', 'keys-title');
  const title = document.createElement('h2');
  title.id = 'keys-title';
  title.textContent = 'Keyboard shortcuts on this page';
  const list = document.createElement('dl');
  for (const element of [...document.querySelectorAll('[data-key]')].filter(isVisible)) {
    line(list, element.dataset.key, words(element));
  }
  line(list, '?', 'Show this list');
  line(list, 'Esc', 'Close a dialog without saving');
  const choice = document.createElement('label');
  const box = document.createElement('input');
  box.type = 'checkbox';
  box.checked = isOn();
  box.addEventListener('change', () => localStorage.setItem(OFF, box.checked ? 'no' : 'yes'));
  choice.append(box, ' Keyboard shortcuts on (always off while you type in a field)');
  const close = document.createElement('button');
  close.type = 'button';
  close.className = 'act first';
  close.textContent = 'Close';
  close.addEventListener('click', () => sheet.close());
  sheet.append(title, list, choice, close);
  sheet.addEventListener('close', () => sheet.remove());
  document.body.append(sheet);
  sheet.showModal();
}

/*
 * Forms that are filled in without a mouse (data-typing): Enter goes on to the next field, past what stands aside of one
 * (data-aside); from the last one to the next such form (go-on), to the button that finishes (settle), or presses that
 * button at once (hand-in).
 * Ctrl+Enter presses it from anywhere on the page.
 */
function finish() {
  return [...topmost().querySelectorAll('[data-finish]')].find(isVisible);
}

function firstAfter(form) {
  return [...document.querySelectorAll('[data-typing]')]
    .find((other) => form.compareDocumentPosition(other) & Node.DOCUMENT_POSITION_FOLLOWING)
    ?.querySelector('input, select');
}

function goOn(form, field) {
  const fields = [...form.querySelectorAll('input, select')]
    .filter((one) => isVisible(one) && one.dataset.aside === undefined);
  const at = fields.indexOf(field);
  const next = fields[at + 1] ?? (form.dataset.typing === 'go-on' ? firstAfter(form) : undefined);
  if (next) {
    next.focus();
    next.select?.();
    return;
  }
  const button = finish();
  button?.focus();
  if (form.dataset.typing === 'hand-in') {
    button?.click();
  }
}

document.addEventListener('keydown', (event) => {
  if (event.key !== 'Enter' || event.repeat || event.altKey || event.isComposing) {
    return;
  }
  if (event.ctrlKey || event.metaKey) {
    const button = finish();
    if (button) {
      event.preventDefault();
      // What was typed stays where it is read: the button may stand at the page's foot.
      button.focus({ preventScroll: true });
      button.click();
    }
    return;
  }
  const form = event.target.closest?.('[data-typing]');
  if (form && event.target.matches('input, select')) {
    event.preventDefault();
    goOn(form, event.target);
  }
}, true);
