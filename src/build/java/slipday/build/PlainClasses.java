package slipday.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.RecordComponentVisitor;

/**
 * Turns the lambdas of compiled classes into classes of their own, and the generated methods of
 * records into plain ones. Java links each of them by code of its own when it is first met, which
 * takes longer than all the rest of a short run; classes come ready out of the archive of the
 * tool's classes. What the code does stays as it is.
 */
public final class PlainClasses {
  private final Map<String, byte[]> classes = new TreeMap<>();
  private final Map<String, byte[]> changed = new TreeMap<>();

  /** Classes made, by the class at the head of the nest whose private methods they call. */
  private final Map<String, List<String>> nests = new HashMap<>();

  private PlainClasses() {}

  /**
   * @param args the folder of the classes, which are rewritten in place
   */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    PlainClasses plain = new PlainClasses();
    plain.read(folder);
    plain.classes.forEach(plain::rewrite);
    plain.nests.forEach(plain::joinNest);
    for (Map.Entry<String, byte[]> each : plain.changed.entrySet()) {
      Files.write(folder.resolve(each.getKey() + ".class"), each.getValue());
    }
  }

  private void read(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder)) {
      files = all.filter(f -> f.toString().endsWith(".class")).toList();
    }
    for (Path file : files) {
      String name = folder.relativize(file).toString().replace('\\', '/');
      classes.put(name.substring(0, name.length() - ".class".length()), Files.readAllBytes(file));
    }
  }

  private void rewrite(String name, byte[] code) {
    ClassReader reader = new ClassReader(code);
    ClassWriter writer = new ClassWriter(reader, 0);
    Rewriter rewriter = new Rewriter(writer, name);
    reader.accept(rewriter, 0);
    if (rewriter.isChanged()) {
      Map<String, byte[]> made = rewriter.made();
      changed.put(name, writer.toByteArray());
      changed.putAll(made);
      nests.computeIfAbsent(rewriter.nest(), n -> new ArrayList<>()).addAll(made.keySet());
    }
  }

  private void joinNest(String head, List<String> members) {
    ClassReader reader = new ClassReader(changed.getOrDefault(head, classes.get(head)));
    ClassWriter writer = new ClassWriter(reader, 0);
    reader.accept(new NestJoiner(writer, members), 0);
    changed.put(head, writer.toByteArray());
  }

  /** Adds members to the nest of a class, at the place among its parts where they belong. */
  private static final class NestJoiner extends ClassVisitor {
    private List<String> members;

    NestJoiner(ClassVisitor next, List<String> members) {
      super(Opcodes.ASM9, next);
      this.members = members;
    }

    private void join() {
      members.forEach(super::visitNestMember);
      members = List.of();
    }

    @Override
    public void visitPermittedSubclass(String name) {
      join();
      super.visitPermittedSubclass(name);
    }

    @Override
    public void visitInnerClass(String name, String outer, String inner, int access) {
      join();
      super.visitInnerClass(name, outer, inner, access);
    }

    @Override
    public RecordComponentVisitor visitRecordComponent(String name, String type, String generic) {
      join();
      return super.visitRecordComponent(name, type, generic);
    }

    @Override
    public FieldVisitor visitField(
        int access, String name, String type, String generic, Object value) {
      join();
      return super.visitField(access, name, type, generic, value);
    }

    @Override
    public MethodVisitor visitMethod(
        int access, String name, String type, String generic, String[] thrown) {
      join();
      return super.visitMethod(access, name, type, generic, thrown);
    }

    @Override
    public void visitEnd() {
      join();
      super.visitEnd();
    }
  }
}
