package org.tautlog.cli;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.Keys;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A headless Chromium of this machine that can reach nothing but files. */
final class Browser implements AutoCloseable {
    /** Held here, as its level is forgotten with it: it warns of interfaces of newer browsers that nothing here uses. */
    private static final Logger SELENIUM = Logger.getLogger("org.openqa.selenium");

    /** Wide enough for a display, and a height that a page outgrows. */
    private static final int HEIGHT_PX = 900;

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    /** Empty where the machine has no Chromium or no driver for it; neither is ever fetched. */
    static Optional<Browser> open(Path profile) {
        var chromium = program("chromium").or(() -> program("google-chrome"));
        var driver = program("chromedriver");
        if (chromium.isEmpty() || driver.isEmpty()) {
            return Optional.empty();
        }
        SELENIUM.setLevel(Level.SEVERE);
        var logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        var options = new ChromeOptions();
        options.setBinary(chromium.get());
        options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
                "--user-data-dir=" + profile);
        var service = new ChromeDriverService.Builder()
                .usingDriverExecutable(driver.get())
                .build();
        return Optional.of(new Browser(new ChromeDriver(service, options)));
    }

    void show(Path page, int widthPx, String scheme) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", widthPx, "height", HEIGHT_PX, "deviceScaleFactor", 1, "mobile", false));
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
        driver.get(page.toUri().toString());
    }

    List<String> console() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::toString)
                .toList();
    }

    Object ask(String script) {
        return driver.executeScript(script);
    }

    void press(Keys key) {
        driver.switchTo().activeElement().sendKeys(key);
    }

    /** What axe-core finds wrong by its rules or those that the options name, each with its first example. */
    List<?> axe(String options) throws IOException {
        try (var script = Browser.class.getResourceAsStream("/axe.min.js")) {
            driver.executeScript(new String(script.readAllBytes(), StandardCharsets.UTF_8));
        }
        return (List<?>) driver.executeAsyncScript("""
                const done = arguments[arguments.length - 1];
                axe.run(document, OPTIONS).then(found => done(found.violations.map(v =>
                    v.id + ' x' + v.nodes.length + ': ' + v.help + ' at ' + v.nodes[0].html.slice(0, 200)
                        + ' | ' + v.nodes[0].failureSummary)), error => done(['axe failed: ' + error]));
                """.replace("OPTIONS", options));
    }

    @Override
    public void close() {
        driver.quit();
    }

    private static Optional<File> program(String name) {
        return Arrays.stream(System.getenv("PATH").split(File.pathSeparator, -1))
                .map(folder -> Path.of(folder, name))
                .filter(Files::isExecutable)
                .map(Path::toFile)
                .findFirst();
    }
}
