package slipday.output.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipday.output.report.Layers.Point;

/** Where the boxes of a descent come to stand. */
class LayersTest {
  private static final double WIDTH = 80;
  private static final double HEIGHT = 30;

  @Test
  void offspringStandsUnderBothParents() {
    Layers layers = new Layers();
    int mother = layers.node(WIDTH, HEIGHT);
    int father = layers.node(WIDTH, HEIGHT);
    int seed = layers.node(WIDTH, HEIGHT);
    int way = layers.edge(mother, seed);
    layers.edge(father, seed);
    layers.edge(father, seed);
    layers.place();
    Point child = layers.corner(seed);
    assertThat(layers.corner(mother).y()).isCloseTo(layers.corner(father).y(), within(1e-6));
    assertThat(child.y()).isGreaterThan(layers.corner(mother).y() + HEIGHT);
    List<Point> line = layers.way(way);
    Point end = line.get(line.size() - 1);
    assertThat(line.get(0).y()).isCloseTo(layers.corner(mother).y() + HEIGHT, within(1.0));
    assertThat(end.y()).isCloseTo(child.y(), within(1.0));
    assertThat(end.x()).isBetween(child.x(), child.x() + WIDTH);
  }
}
