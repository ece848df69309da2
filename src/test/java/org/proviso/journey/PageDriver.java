package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._find;
import static com.github.mvysny.kaributesting.v10.LocatorJ._fireValueChange;
import static com.github.mvysny.kaributesting.v10.LocatorJ._get;
import static org.assertj.core.api.Assertions.assertThat;

import com.github.mvysny.fakeservlet.FakeRequest;
import com.github.mvysny.kaributesting.v10.MockVaadin;
import com.github.mvysny.kaributesting.v10.Routes;
import com.github.mvysny.kaributesting.v10.mock.MockedUI;
import com.github.mvysny.kaributesting.v10.spring.MockSpringServlet;
import com.vaadin.flow.component.ClickEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.HasValue;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.dom.DomEvent;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.internal.nodefeature.ElementListenerMap;
import com.vaadin.flow.router.HasErrorParameter;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.VaadinServletRequest;
import elemental.json.Json;
import elemental.json.JsonObject;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.Choice;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.ClassPathScanningCandidateComponentProvider;
import org.springframework.core.type.filter.AnnotationTypeFilter;
import org.springframework.core.type.filter.AssignableTypeFilter;
import org.springframework.core.type.filter.TypeFilter;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.util.ClassUtils;

/** The pages of a server, as one of the staff opens them and works on them, without a browser. */
final class PageDriver {

    /** Pages that other rooms cannot name among them. */
    private static final Set<Class<? extends Component>> PAGES = found(new AnnotationTypeFilter(Route.class))
            .<Class<? extends Component>>map(page -> page.asSubclass(Component.class))
            .collect(Collectors.toSet());

    private final ApplicationContext server;
    private final Routes routes;

    private PageDriver(ApplicationContext server, Set<Class<? extends HasErrorParameter<?>>> errorPages) {
        this.server = server;
        this.routes = new Routes(PAGES, errorPages, true);
    }

    /** What goes wrong on a page is thrown at the test. */
    static PageDriver of(ApplicationContext server) {
        return new PageDriver(server, Set.of());
    }

    /** What goes wrong on a page leads to the page that says so. */
    @SuppressWarnings("unchecked")
    static PageDriver withErrorPages(ApplicationContext server) {
        return new PageDriver(
                server,
                found(new AssignableTypeFilter(HasErrorParameter.class))
                        .map(page -> (Class<? extends HasErrorParameter<?>>) page)
                        .collect(Collectors.toSet()));
    }

    private static Stream<Class<?>> found(TypeFilter wanted) {
        ClassPathScanningCandidateComponentProvider scanner = new ClassPathScanningCandidateComponentProvider(false);
        scanner.addIncludeFilter(wanted);
        return scanner.findCandidateComponents("org.proviso").stream()
                .map(found -> ClassUtils.resolveClassName(String.valueOf(found.getBeanClassName()), null));
    }

    /** The address of every page. */
    static List<String> addresses() {
        return PAGES.stream()
                .map(page -> page.getAnnotation(Route.class).value())
                .toList();
    }

    /** Something done by one of the staff in a browser of their own. */
    <T> T as(String who, Supplier<T> act) {
        return Office.as(who, () -> {
            MockVaadin.setup(MockedUI::new, new MockSpringServlet(routes, server, MockedUI::new));
            try {
                FakeRequest request =
                        (FakeRequest) VaadinServletRequest.getCurrent().getRequest();
                request.setUserPrincipalInt(SecurityContextHolder.getContext().getAuthentication());
                return act.get();
            } finally {
                MockVaadin.tearDown();
            }
        });
    }

    /** What one of the staff does on a page; its address may ask for something after a question mark. */
    void on(String address, String who, Runnable act) {
        as(who, () -> {
            String[] parts = address.split("\\?", 2);
            UI.getCurrent().navigate(parts[0], QueryParameters.fromString(parts.length == 1 ? "" : parts[1]));
            act.run();
            return who;
        });
    }

    private static String name(ActButton button) {
        return Optional.ofNullable(button.getElement().getAttribute("aria-label"))
                .orElse(button.getElement().getTextRecursively());
    }

    /** Presses the button of that name that came last: a sheet lies over its page. */
    static void press(String name) {
        List<ActButton> found = _find(ActButton.class).stream()
                .filter(button -> name(button).startsWith(name))
                .toList();
        assertThat(found).as(name).isNotEmpty();
        ActButton last = found.get(found.size() - 1);
        ComponentUtil.fireEvent(last, new ClickEvent<>(last));
    }

    /** Presses the button of an act on the case that is on the page, in the version that stands there. */
    static void pressOnCase(String name) {
        ActButton button = _find(ActButton.class).stream()
                .filter(found -> name(found).startsWith(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button " + name));
        String seen = "element.closest('[data-case]')?.dataset.case ?? ''";
        String shown = Stream.iterate(button.getElement(), Objects::nonNull, Element::getParent)
                .filter(element -> element.hasAttribute("data-case"))
                .findFirst()
                .map(element -> element.getAttribute("data-case"))
                .orElseThrow();
        JsonObject data = Json.createObject();
        data.put(seen, shown);
        Element pressed = button.getElement();
        pressed.getNode().getFeature(ElementListenerMap.class).fireEvent(new DomEvent(pressed, "click", data));
    }

    /** Types into the box of that name. */
    static void type(String field, String text) {
        Input box = _get(Input.class, wanted -> wanted.withId(field));
        box.setValue(text);
        _fireValueChange(box, true);
    }

    /** Enters a value in the field of a sheet that has this label; of several the one that came last. */
    @SuppressWarnings("unchecked")
    static <V> void fill(String label, @Nullable V value) {
        ((HasValue<?, V>) labeled(label)).setValue(value);
    }

    /** What stands in the field of a sheet that has this label. */
    static @Nullable Object value(String label) {
        return ((HasValue<?, ?>) labeled(label)).getValue();
    }

    /** What is said to be wrong in the field with this label; empty where nothing is. */
    static String marked(String label) {
        HasValidation field = (HasValidation) labeled(label);
        return field.isInvalid() ? String.valueOf(field.getErrorMessage()) : "";
    }

    private static Component labeled(String label) {
        List<Component> found = _find(Component.class, wanted -> wanted.withLabel(label));
        assertThat(found).as(label).isNotEmpty();
        return found.get(found.size() - 1);
    }

    /** Chooses one of the codes in the list of that name. */
    static void choose(String field, String code) {
        Choice list = _get(Choice.class, wanted -> wanted.withId(field));
        list.setValue(code);
        _fireValueChange(list, true);
    }

    /** What is said to be wrong beside the box of that name; empty where nothing is. */
    static String wrong(String field) {
        return _get(Span.class, wanted -> wanted.withId(field + "-problem")).getText();
    }

    /** What is asked about the box of that name, or how it is marked; empty where nothing is. */
    static String asked(String field) {
        return _get(Span.class, wanted -> wanted.withId(field + "-question"))
                .getElement()
                .getTextRecursively();
    }

    /** What stands in the box of that name. */
    static String text(String field) {
        return _get(Input.class, wanted -> wanted.withId(field)).getValue();
    }

    /** What is chosen in the list of that name. */
    static String chosen(String field) {
        return _get(Choice.class, wanted -> wanted.withId(field)).getValue();
    }

    /** The person goes on from the box or list of that name. */
    static void leave(String field) {
        Element left = _get(Component.class, wanted -> wanted.withId(field)).getElement();
        left.getNode().getFeature(ElementListenerMap.class).fireEvent(new DomEvent(left, "blur", Json.createObject()));
    }

    /** Types into the box of that name and goes on. */
    static void typeAndLeave(String field, String text) {
        type(field, text);
        leave(field);
    }

    /** The words of the page, and of the sheets over it. */
    static String said() {
        // a sheet is on the page once the server has answered
        MockVaadin.clientRoundtrip();
        return Stream.concat(
                        Stream.of(UI.getCurrent()),
                        UI.getCurrent().getInternals().getActiveRouterTargetsChain().stream())
                .map(part -> part.getElement().getTextRecursively())
                .collect(Collectors.joining(" "));
    }
}
