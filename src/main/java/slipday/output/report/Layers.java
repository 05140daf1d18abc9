package slipday.output.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import org.eclipse.elk.alg.layered.ElkLayered;
import org.eclipse.elk.alg.layered.graph.LEdge;
import org.eclipse.elk.alg.layered.graph.LGraph;
import org.eclipse.elk.alg.layered.graph.LNode;
import org.eclipse.elk.alg.layered.graph.LPort;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.core.math.ElkMargin;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.math.KVector;
import org.eclipse.elk.core.math.KVectorChain;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.util.ElkReflect;

/**
 * Places the nodes of a graph in layers, each under those that lead to it, and bends its edges
 * round them: the method of Sugiyama and others (1981), by the Eclipse Layout Kernel. Its own graph
 * is filled in without the import from its editors' models, which would have to be loaded first.
 */
final class Layers {
  private static final double BETWEEN_LAYERS = 26;
  private static final double BETWEEN_NODES = 14;
  private static final double BETWEEN_EDGES = 9;

  private final LGraph graph = new LGraph();
  private final List<LNode> nodes = new ArrayList<>();
  private final List<LEdge> edges = new ArrayList<>();

  static {
    ElkReflect.registerClone(ArrayList.class, o -> new ArrayList<>((ArrayList<?>) o));
    ElkReflect.registerClone(EnumSet.class, o -> ((EnumSet<?>) o).clone());
    ElkReflect.registerClone(KVector.class, o -> ((KVector) o).clone());
    ElkReflect.registerClone(KVectorChain.class, o -> new KVectorChain((KVectorChain) o));
    ElkReflect.registerClone(ElkPadding.class, o -> ((ElkPadding) o).clone());
    ElkReflect.registerClone(ElkMargin.class, o -> ((ElkMargin) o).clone());
  }

  /** A place, px to the right and down. */
  record Point(double x, double y) {}

  Layers() {
    graph.setProperty(LayeredOptions.DIRECTION, Direction.DOWN);
    graph.setProperty(LayeredOptions.EDGE_ROUTING, EdgeRouting.POLYLINE);
    graph.setProperty(LayeredOptions.SPACING_NODE_NODE, BETWEEN_NODES);
    graph.setProperty(LayeredOptions.SPACING_EDGE_NODE, BETWEEN_EDGES);
    graph.setProperty(LayeredOptions.SPACING_EDGE_EDGE, BETWEEN_EDGES);
    graph.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, BETWEEN_LAYERS);
    graph.setProperty(LayeredOptions.RANDOM_SEED, 1);
  }

  /** Makes its classes ready; they take longer to load than a graph to place. */
  static double makeReady() {
    Layers layers = new Layers();
    layers.edge(layers.node(1, 1), layers.node(1, 1));
    layers.place();
    return layers.width();
  }

  /**
   * @return its number, from 0
   */
  int node(double width, double height) {
    LNode node = new LNode(graph);
    node.getSize().x = width;
    node.getSize().y = height;
    node.setProperty(LayeredOptions.PORT_CONSTRAINTS, PortConstraints.FREE);
    graph.getLayerlessNodes().add(node);
    nodes.add(node);
    return nodes.size() - 1;
  }

  /**
   * @return its number, from 0
   */
  int edge(int from, int to) {
    LEdge edge = new LEdge();
    edge.setSource(port(from));
    edge.setTarget(port(to));
    edges.add(edge);
    return edges.size() - 1;
  }

  private LPort port(int node) {
    LPort port = new LPort();
    port.setNode(nodes.get(node));
    return port;
  }

  void place() {
    new ElkLayered().doLayout(graph, new BasicProgressMonitor());
  }

  double width() {
    return graph.getSize().x + graph.getPadding().left + graph.getPadding().right;
  }

  double height() {
    return graph.getSize().y + graph.getPadding().top + graph.getPadding().bottom;
  }

  private Point at(KVector place) {
    return new Point(
        place.x + graph.getOffset().x + graph.getPadding().left,
        place.y + graph.getOffset().y + graph.getPadding().top);
  }

  /** The upper left corner of a node. */
  Point corner(int node) {
    return at(nodes.get(node).getPosition());
  }

  /** From end to end, with what it bends round. */
  List<Point> way(int edge) {
    LEdge placed = edges.get(edge);
    List<Point> way = new ArrayList<>(List.of(at(placed.getSource().getAbsoluteAnchor())));
    placed.getBendPoints().forEach(p -> way.add(at(p)));
    way.add(at(placed.getTarget().getAbsoluteAnchor()));
    return way;
  }
}
