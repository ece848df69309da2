package org.proviso.access.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.CookiePolicy;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A browser without a script engine: it keeps cookies, does not follow redirections, and copies a form's token. */
public final class PlainBrowser {

    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    private final CookieManager cookies = new CookieManager(null, CookiePolicy.ACCEPT_ALL);
    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(cookies).build();
    private final String server;

    public PlainBrowser(int port) {
        server = "http://localhost:" + port;
    }

    public HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(URI.create(server + path)));
    }

    /** Sends fields as they are, without a token. */
    public HttpResponse<String> post(String path, Map<String, String> fields) {
        String body = fields.entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return send(HttpRequest.newBuilder(URI.create(server + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    /** Opens the page of a form and sends it filled in. */
    public HttpResponse<String> fill(String page, String path, Map<String, String> fields) {
        Matcher token = TOKEN.matcher(get(page).body());
        Map<String, String> all = new LinkedHashMap<>(fields);
        if (token.find()) {
            all.put("_csrf", token.group(1));
        }
        return post(path, all);
    }

    public HttpResponse<String> signIn(String name, String password) {
        return fill("/sign-in", "/sign-in", Map.of("user", name, "password", password));
    }

    public boolean hasCookie(String name) {
        return cookies.getCookieStore().getCookies().stream()
                .anyMatch(cookie -> cookie.getName().equals(name));
    }

    /** Where a redirection leads, without the server's name. */
    public static String target(HttpResponse<String> answer) {
        return answer.headers().firstValue("Location").orElse("").replaceFirst("^http://[^/]+", "");
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
