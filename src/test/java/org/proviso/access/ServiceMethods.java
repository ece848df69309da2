package org.proviso.access;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.proviso.core.BetweenRooms;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;

/** Every public method of every service that a page may call, by "Service.method(Types)". */
final class ServiceMethods {

    private ServiceMethods() {}

    static Map<String, Method> all() {
        Map<String, Method> methods = new TreeMap<>();
        for (JavaClass item : new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("org.proviso")) {
            if (item.isAnnotatedWith(Service.class)
                    && !item.isAnnotatedWith(BetweenRooms.class)
                    && !item.getSimpleName().equals("AccessService")) {
                for (Method method : item.reflect().getDeclaredMethods()) {
                    if (isOffered(method)) {
                        methods.put(name(method), method);
                    }
                }
            }
        }
        return methods;
    }

    private static boolean isOffered(Method method) {
        return Modifier.isPublic(method.getModifiers())
                && !method.isSynthetic()
                && !method.isAnnotationPresent(EventListener.class);
    }

    private static String name(Method method) {
        return method.getDeclaringClass().getSimpleName() + "." + method.getName()
                + Arrays.stream(method.getParameterTypes())
                        .map(Class::getSimpleName)
                        .collect(Collectors.joining(", ", "(", ")"));
    }
}
