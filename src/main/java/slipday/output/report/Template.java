package slipday.output.report;

import com.samskivert.mustache.Escapers;
import com.samskivert.mustache.Mustache;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Optional;
import slipday.output.Lines;

/**
 * Fills in a page. Whatever is filled in is escaped, but for {@link Raw}, which this package makes.
 */
final class Template {
  private static final String FOLDER = "/slipday/report/";

  private Template() {}

  /** Markup, style or script that is ours. */
  record Raw(String text) {
    @Override
    public String toString() {
      return text;
    }

    /** What a content security policy calls it. */
    String hash() {
      try {
        MessageDigest sha = MessageDigest.getInstance("SHA-256");
        byte[] digest = sha.digest(text.getBytes(StandardCharsets.UTF_8));
        return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
      } catch (NoSuchAlgorithmException e) {
        throw new IllegalStateException(e); // every Java has it
      }
    }
  }

  /** The policy of a page that has this style, this script and nothing else. */
  static String policy(Raw style, Optional<Raw> script) {
    return "default-src 'none'; style-src "
        + style.hash()
        + script.map(s -> "; script-src " + s.hash()).orElse("")
        + "; img-src data:; base-uri 'none'; form-action 'none'";
  }

  static String fill(String name, Object view) {
    return Mustache.compiler()
        .escapeHTML(true)
        .strictSections(true)
        .emptyStringIsFalse(true)
        .withLoader(part -> new java.io.StringReader(read(part + ".html")))
        .withFormatter(Template::shown)
        .compile(read(name))
        .execute(view);
  }

  /** A text as it stands in a page. */
  static String escaped(String text) {
    return Escapers.HTML.escape(Lines.clean(text));
  }

  private static String shown(Object value) {
    return value instanceof Raw raw ? raw.text() : Lines.clean(String.valueOf(value));
  }

  static String read(String name) {
    try (InputStream in = Template.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new IllegalStateException("no file " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
