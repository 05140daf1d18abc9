package slipday.build;

import java.util.List;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Turns a value of one type into one of another, as a call of a lambda does. */
final class Conversion {
  private static final List<Type> PRIMITIVES =
      List.of(
          Type.BOOLEAN_TYPE,
          Type.CHAR_TYPE,
          Type.BYTE_TYPE,
          Type.SHORT_TYPE,
          Type.INT_TYPE,
          Type.LONG_TYPE,
          Type.FLOAT_TYPE,
          Type.DOUBLE_TYPE);
  private static final List<Type> BOXES =
      List.of(
          Type.getType(Boolean.class),
          Type.getType(Character.class),
          Type.getType(Byte.class),
          Type.getType(Short.class),
          Type.getType(Integer.class),
          Type.getType(Long.class),
          Type.getType(Float.class),
          Type.getType(Double.class));

  private Conversion() {}

  static boolean isPrimitive(Type type) {
    return PRIMITIVES.contains(type);
  }

  /** The class whose objects hold values of a primitive type. */
  static Type box(Type primitive) {
    return BOXES.get(PRIMITIVES.indexOf(primitive));
  }

  static void convert(MethodVisitor code, Type from, Type to) {
    if (isPrimitive(from) && isPrimitive(to)) {
      widen(code, from, to);
    } else if (isPrimitive(from)) {
      Type box = box(from);
      String boxing = Type.getMethodDescriptor(box, from);
      code.visitMethodInsn(Opcodes.INVOKESTATIC, box.getInternalName(), "valueOf", boxing, false);
    } else if (isPrimitive(to)) {
      unbox(code, from, to);
    } else if (!from.equals(to) && !to.getInternalName().equals("java/lang/Object")) {
      code.visitTypeInsn(Opcodes.CHECKCAST, to.getInternalName());
    }
  }

  private static void unbox(MethodVisitor code, Type from, Type to) {
    Type box = BOXES.contains(from) ? from : box(to);
    Type primitive = PRIMITIVES.get(BOXES.indexOf(box));
    convert(code, from, box);
    String unboxing = Type.getMethodDescriptor(primitive);
    code.visitMethodInsn(
        Opcodes.INVOKEVIRTUAL,
        box.getInternalName(),
        primitive.getClassName() + "Value",
        unboxing,
        false);
    widen(code, primitive, to);
  }

  private static void widen(MethodVisitor code, Type from, Type to) {
    if (from.equals(to) || (isInt(from) && isInt(to))) {
      return;
    }
    if (isInt(from)) {
      code.visitInsn(fromInt(to));
    } else if (from.equals(Type.LONG_TYPE)) {
      code.visitInsn(to.equals(Type.FLOAT_TYPE) ? Opcodes.L2F : Opcodes.L2D);
    } else {
      code.visitInsn(Opcodes.F2D);
    }
  }

  private static boolean isInt(Type type) {
    return type.getSort() <= Type.INT;
  }

  private static int fromInt(Type to) {
    return switch (to.getSort()) {
      case Type.LONG -> Opcodes.I2L;
      case Type.FLOAT -> Opcodes.I2F;
      default -> Opcodes.I2D;
    };
  }
}
