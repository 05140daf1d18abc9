package slipday.build;

import java.util.Arrays;
import java.util.List;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * {@code equals}, {@code hashCode} or {@code toString} of a record, as the language leaves to be
 * generated when first called.
 */
final class RecordMethod {
  private static final String BUILDER = "java/lang/StringBuilder";
  private static final String OBJECTS = "java/util/Objects";
  private static final int HASH_FACTOR = 31;

  private final String method;
  private final String type;
  private final String self;
  private final String[] names;
  private final List<Handle> fields;

  /**
   * @param facts the record, the names of its components, and how each is read
   */
  RecordMethod(String method, String type, Object... facts) {
    this.method = method;
    this.type = type;
    this.self = ((Type) facts[0]).getInternalName();
    this.names = ((String) facts[1]).split(";");
    this.fields = Arrays.stream(facts, 2, facts.length).map(Handle.class::cast).toList();
  }

  /** The name of the plain method. */
  String name() {
    return "record$" + method;
  }

  String type() {
    return type;
  }

  void write(MethodVisitor code) {
    code.visitCode();
    switch (method) {
      case "equals" -> equality(code);
      case "hashCode" -> hash(code);
      default -> text(code);
    }
    // The widest: two longs, or a builder with a long.
    code.visitMaxs(5, 2);
    code.visitEnd();
  }

  private static void read(MethodVisitor code, Handle field) {
    code.visitFieldInsn(Opcodes.GETFIELD, field.getOwner(), field.getName(), field.getDesc());
  }

  private void equality(MethodVisitor code) {
    Label differ = new Label();
    code.visitVarInsn(Opcodes.ALOAD, 1);
    code.visitTypeInsn(Opcodes.INSTANCEOF, self);
    code.visitJumpInsn(Opcodes.IFEQ, differ);
    for (Handle field : fields) {
      code.visitVarInsn(Opcodes.ALOAD, 0);
      read(code, field);
      code.visitVarInsn(Opcodes.ALOAD, 1);
      code.visitTypeInsn(Opcodes.CHECKCAST, self);
      read(code, field);
      leaveIfDifferent(code, Type.getType(field.getDesc()), differ);
    }
    code.visitInsn(Opcodes.ICONST_1);
    code.visitInsn(Opcodes.IRETURN);
    code.visitLabel(differ);
    code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
    code.visitInsn(Opcodes.ICONST_0);
    code.visitInsn(Opcodes.IRETURN);
  }

  private static void leaveIfDifferent(MethodVisitor code, Type of, Label differ) {
    switch (of.getSort()) {
      case Type.DOUBLE -> {
        call(code, "java/lang/Double", "compare", "(DD)I");
        code.visitJumpInsn(Opcodes.IFNE, differ);
      }
      case Type.FLOAT -> {
        call(code, "java/lang/Float", "compare", "(FF)I");
        code.visitJumpInsn(Opcodes.IFNE, differ);
      }
      case Type.LONG -> {
        code.visitInsn(Opcodes.LCMP);
        code.visitJumpInsn(Opcodes.IFNE, differ);
      }
      case Type.OBJECT, Type.ARRAY -> {
        call(code, OBJECTS, "equals", "(Ljava/lang/Object;Ljava/lang/Object;)Z");
        code.visitJumpInsn(Opcodes.IFEQ, differ);
      }
      default -> code.visitJumpInsn(Opcodes.IF_ICMPNE, differ);
    }
  }

  private void hash(MethodVisitor code) {
    code.visitInsn(Opcodes.ICONST_0);
    for (Handle field : fields) {
      Type of = Type.getType(field.getDesc());
      code.visitIntInsn(Opcodes.BIPUSH, HASH_FACTOR);
      code.visitInsn(Opcodes.IMUL);
      code.visitVarInsn(Opcodes.ALOAD, 0);
      read(code, field);
      if (Conversion.isPrimitive(of)) {
        String hashing = Type.getMethodDescriptor(Type.INT_TYPE, of);
        call(code, Conversion.box(of).getInternalName(), "hashCode", hashing);
      } else {
        call(code, OBJECTS, "hashCode", "(Ljava/lang/Object;)I");
      }
      code.visitInsn(Opcodes.IADD);
    }
    code.visitInsn(Opcodes.IRETURN);
  }

  private void text(MethodVisitor code) {
    String simple = self.substring(Math.max(self.lastIndexOf('/'), self.lastIndexOf('$')) + 1);
    code.visitTypeInsn(Opcodes.NEW, BUILDER);
    code.visitInsn(Opcodes.DUP);
    code.visitMethodInsn(Opcodes.INVOKESPECIAL, BUILDER, "<init>", "()V", false);
    append(code, simple + "[");
    for (int i = 0; i < fields.size(); i++) {
      append(code, (i == 0 ? "" : ", ") + names[i] + "=");
      code.visitVarInsn(Opcodes.ALOAD, 0);
      read(code, fields.get(i));
      appendTop(code, shown(Type.getType(fields.get(i).getDesc())));
    }
    append(code, "]");
    String toString = "()Ljava/lang/String;";
    code.visitMethodInsn(Opcodes.INVOKEVIRTUAL, BUILDER, "toString", toString, false);
    code.visitInsn(Opcodes.ARETURN);
  }

  /** As what a builder takes a value. */
  private static String shown(Type of) {
    return switch (of.getSort()) {
      case Type.OBJECT, Type.ARRAY -> "Ljava/lang/Object;";
      case Type.BYTE, Type.SHORT -> "I";
      default -> of.getDescriptor();
    };
  }

  private static void append(MethodVisitor code, String text) {
    code.visitLdcInsn(text);
    appendTop(code, "Ljava/lang/String;");
  }

  /** Appends what was last worked out, of that type. */
  private static void appendTop(MethodVisitor code, String of) {
    String type = "(" + of + ")L" + BUILDER + ";";
    code.visitMethodInsn(Opcodes.INVOKEVIRTUAL, BUILDER, "append", type, false);
  }

  private static void call(MethodVisitor code, String owner, String name, String type) {
    code.visitMethodInsn(Opcodes.INVOKESTATIC, owner, name, type, false);
  }
}
