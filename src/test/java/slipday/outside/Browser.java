package slipday.outside;

import static org.junit.jupiter.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A Chromium without a window, driven by the W3C's WebDriver protocol and, where that has no word
 * for it, by Chromium's own. It writes to no place but a folder of its own and asks no network.
 */
public final class Browser implements AutoCloseable {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern PORT = Pattern.compile("successfully on port (\\d+)");
  private static final List<String> FLAGS =
      List.of(
          "--headless",
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync",
          "--disable-dev-shm-usage",
          "--hide-scrollbars",
          "--force-color-profile=srgb",
          "--font-render-hinting=none",
          "--lang=en-GB");

  private final Process driver;
  private final Path profile;
  private final HttpClient http =
      HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(20)).build();
  private final String session;

  private Browser(Process driver, int port) throws IOException {
    this.driver = driver;
    this.profile = Files.createTempDirectory("browser");
    List<String> flags = new ArrayList<>(FLAGS);
    flags.add("--user-data-dir=" + profile);
    Map<String, Object> wanted =
        Map.of(
            "browserName",
            "chrome",
            "goog:loggingPrefs",
            Map.of("browser", "ALL", "performance", "ALL"),
            "goog:chromeOptions",
            Map.of("binary", OutsideTools.CHROMIUM, "args", flags));
    String root = "http://127.0.0.1:" + port + "/session";
    JsonNode made = post(root, Map.of("capabilities", Map.of("alwaysMatch", wanted)));
    this.session = root + "/" + made.get("sessionId").asText();
  }

  /** Skips the test, or fails it under CI, where there is no Chromium or no driver for it. */
  public static Browser start() {
    OutsideTools.chromium();
    try {
      Process driver =
          new ProcessBuilder("chromedriver", "--port=0").redirectErrorStream(true).start();
      Runtime.getRuntime().addShutdownHook(new Thread(driver::destroy));
      BufferedReader said =
          new BufferedReader(
              new InputStreamReader(driver.getInputStream(), StandardCharsets.UTF_8));
      for (String line = said.readLine(); line != null; line = said.readLine()) {
        Matcher port = PORT.matcher(line);
        if (port.find()) {
          return new Browser(driver, Integer.parseInt(port.group(1)));
        }
      }
      return fail("chromedriver did not start.");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private JsonNode post(String url, Object body) {
    try {
      HttpRequest request =
          HttpRequest.newBuilder(URI.create(url))
              .timeout(Duration.ofSeconds(120))
              .header("Content-Type", "application/json")
              .POST(HttpRequest.BodyPublishers.ofString(JSON.writeValueAsString(body)))
              .build();
      return value(http.send(request, HttpResponse.BodyHandlers.ofString()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return fail("Interrupted while asking the browser.");
    }
  }

  private static JsonNode value(HttpResponse<String> answer) throws IOException {
    JsonNode value = JSON.readTree(answer.body()).get("value");
    return answer.statusCode() == 200 ? value : fail("The browser says " + value);
  }

  /** Opens a page, and forgets what was asked for and complained of before. */
  public void open(Path page) {
    log("browser");
    log("performance");
    post(session + "/url", Map.of("url", page.toAbsolutePath().toUri().toString()));
  }

  /** Runs a script in the page, as the body of a function, and gives what it returns. */
  public JsonNode run(String script, Object... arguments) {
    return post(session + "/execute/sync", Map.of("script", script, "args", List.of(arguments)));
  }

  /** The same for a script that hands its result to its last argument. */
  public JsonNode runAsync(String script, Object... arguments) {
    return post(session + "/execute/async", Map.of("script", script, "args", List.of(arguments)));
  }

  /** A command of Chromium's own protocol. */
  public JsonNode command(String command, Map<String, ?> parameters) {
    return post(session + "/goog/cdp/execute", Map.of("cmd", command, "params", parameters));
  }

  /** As on a screen of this size, in CSS px; below 700 as on a telephone. */
  public void resize(int width, int height) {
    command(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 700));
  }

  public void dark(boolean dark) {
    Map<String, String> scheme =
        Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light");
    Map<String, String> still = Map.of("name", "prefers-reduced-motion", "value", "reduce");
    command("Emulation.setEmulatedMedia", Map.of("media", "", "features", List.of(scheme, still)));
  }

  /** Whether pages opened from now on may run scripts; those of {@link #run} do all the same. */
  public void scripts(boolean run) {
    command("Emulation.setScriptExecutionDisabled", Map.of("value", !run));
  }

  /** With the styles for paper, until light or dark is asked for. */
  public void onPaper() {
    command("Emulation.setEmulatedMedia", Map.of("media", "print"));
  }

  public void key(String key) {
    for (String type : List.of("keyDown", "keyUp")) {
      Map<String, Object> pressed =
          key.equals("Enter")
              ? Map.of("type", type, "key", key, "text", "\r", "windowsVirtualKeyCode", 13)
              : Map.of("type", type, "key", key, "windowsVirtualKeyCode", code(key));
      command("Input.dispatchKeyEvent", pressed);
    }
  }

  private static int code(String key) {
    return switch (key) {
      case "Tab" -> 9;
      case "Escape" -> 27;
      case "ArrowLeft" -> 37;
      case "ArrowUp" -> 38;
      case "ArrowRight" -> 39;
      case "ArrowDown" -> 40;
      default -> throw new IllegalArgumentException(key);
    };
  }

  public void tap(double x, double y) {
    for (String type : List.of("mousePressed", "mouseReleased")) {
      command(
          "Input.dispatchMouseEvent",
          Map.of("type", type, "x", x, "y", y, "button", "left", "clickCount", 1));
    }
  }

  /** Messages of the console since the last time, but for those without a worry in them. */
  public List<String> complaints() {
    List<String> messages = new ArrayList<>();
    for (JsonNode entry : log("browser")) {
      if (!entry.get("level").asText().equals("DEBUG")
          && !entry.get("level").asText().equals("INFO")) {
        messages.add(entry.get("message").asText());
      }
    }
    return messages;
  }

  /** The addresses asked for since the last time, but for the browser's own first page. */
  public List<String> requests() {
    List<String> urls = new ArrayList<>();
    for (JsonNode entry : log("performance")) {
      try {
        JsonNode message = JSON.readTree(entry.get("message").asText()).get("message");
        if (message.get("method").asText().equals("Network.requestWillBeSent")) {
          String url = message.at("/params/request/url").asText();
          if (!url.startsWith("chrome:")) {
            urls.add(url);
          }
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return urls;
  }

  private JsonNode log(String type) {
    return post(session + "/se/log", Map.of("type", type));
  }

  /** The page as printed on sheets of this size (cm), PDF. */
  public byte[] print(double width, double height) {
    double inch = 2.54;
    JsonNode pdf =
        command(
            "Page.printToPDF",
            Map.of(
                "paperWidth",
                width / inch,
                "paperHeight",
                height / inch,
                "preferCSSPageSize",
                false,
                "printBackground",
                true,
                "marginTop",
                0.4,
                "marginBottom",
                0.4,
                "marginLeft",
                0.4,
                "marginRight",
                0.4));
    return Base64.getDecoder().decode(pdf.get("data").asText());
  }

  /** How many pages a PDF of Chromium's has. */
  public static int pages(byte[] pdf) {
    Matcher page =
        Pattern.compile("/Type\\s*/Page\\b(?!s)")
            .matcher(new String(pdf, StandardCharsets.ISO_8859_1));
    return (int) page.results().count();
  }

  /**
   * A part of the page, in CSS px from its corner, PNG.
   *
   * @param scale dots for each px
   */
  public byte[] picture(double x, double y, double width, double height, double scale) {
    Map<String, Object> clip =
        Map.of("x", x, "y", y, "width", width, "height", height, "scale", scale);
    JsonNode png =
        command(
            "Page.captureScreenshot",
            Map.of("format", "png", "captureBeyondViewport", true, "clip", clip));
    return Base64.getDecoder().decode(png.get("data").asText());
  }

  /** What is on the screen now, PNG. */
  public byte[] screen() {
    JsonNode png = command("Page.captureScreenshot", Map.of("format", "png"));
    return Base64.getDecoder().decode(png.get("data").asText());
  }

  @Override
  public void close() {
    try {
      HttpRequest quit = HttpRequest.newBuilder(URI.create(session)).DELETE().build();
      http.send(quit, HttpResponse.BodyHandlers.discarding());
      driver.destroy();
      driver.waitFor(10, TimeUnit.SECONDS);
      try (Stream<Path> left = Files.walk(profile)) {
        left.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
