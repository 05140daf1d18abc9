package slipday.output.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import slipday.output.report.Layers.Point;

/** Any descent that can be can be drawn. */
class LayersProperties {
  private static final double WIDTH = 60;
  private static final double HEIGHT = 24;

  @Property(tries = 60)
  void noTwoBoxesOverlapAndAllLieWithin(
      @ForAll @Size(min = 1, max = 40) List<@IntRange(max = 500) Integer> parents) {
    Layers layers = new Layers();
    int nodes = 1 + parents.size();
    for (int i = 0; i < nodes; i++) {
      layers.node(WIDTH, HEIGHT);
    }
    for (int i = 0; i < parents.size(); i++) {
      layers.edge(parents.get(i) % (i + 1), i + 1);
      layers.edge(parents.get(i) / 20 % (i + 1), i + 1);
    }
    layers.place();
    for (int i = 0; i < nodes; i++) {
      Point a = layers.corner(i);
      assertThat(a.x()).isBetween(-0.01, layers.width() - WIDTH + 0.01);
      assertThat(a.y()).isBetween(-0.01, layers.height() - HEIGHT + 0.01);
      for (int j = 0; j < i; j++) {
        Point b = layers.corner(j);
        boolean clear = Math.abs(a.x() - b.x()) >= WIDTH || Math.abs(a.y() - b.y()) >= HEIGHT;
        assertThat(clear).as(a + " and " + b).isTrue();
      }
    }
    for (int i = 0; i < parents.size(); i++) {
      double above = layers.corner(parents.get(i) % (i + 1)).y();
      assertThat(above + HEIGHT).isLessThan(layers.corner(i + 1).y());
    }
  }
}
