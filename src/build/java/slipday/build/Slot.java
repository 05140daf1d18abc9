package slipday.build;

import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * A place in an object for one thing that a lambda caught. Lambdas of one class share them.
 *
 * @param type of the field: that of objects, or a primitive one
 * @param number among the fields of that type
 */
record Slot(Type type, int number) {
  private static final Type OBJECT = Type.getType(Object.class);

  /** The type of the field that keeps a value. */
  static Type kept(Type caught) {
    if (!Conversion.isPrimitive(caught)) {
      return OBJECT;
    }
    return caught.getSort() < Type.INT ? Type.INT_TYPE : caught;
  }

  String field() {
    return (type.equals(OBJECT) ? "object" : type.getClassName()) + number;
  }

  /** Turns what the field holds into what was caught. */
  void takeOut(MethodVisitor code, Type caught) {
    if (type.equals(OBJECT) && !caught.equals(OBJECT)) {
      code.visitTypeInsn(Opcodes.CHECKCAST, caught.getInternalName());
    }
  }

  /** What stands in the field where a lambda keeps nothing there. */
  void leaveEmpty(MethodVisitor code) {
    code.visitInsn(
        switch (type.getSort()) {
          case Type.LONG -> Opcodes.LCONST_0;
          case Type.FLOAT -> Opcodes.FCONST_0;
          case Type.DOUBLE -> Opcodes.DCONST_0;
          case Type.INT -> Opcodes.ICONST_0;
          default -> Opcodes.ACONST_NULL;
        });
  }
}
