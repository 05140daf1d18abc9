package slipday.build;

import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * A class that does what a lambda does: it keeps what the lambda caught, and calls its body.
 *
 * @param name of the class
 * @param making what the lambda catches, and the interface it becomes
 * @param method of that interface
 * @param erased the method's type as the interface has it
 * @param body what is called
 * @param actual the method's type as the lambda has it
 */
record LambdaClass(String name, Type making, String method, Type erased, Handle body, Type actual) {
  /** The method that makes one. */
  static final String MAKE = "make";

  private static final String INIT = "<init>";

  private Type[] caught() {
    return making.getArgumentTypes();
  }

  private String constructor() {
    return Type.getMethodDescriptor(Type.VOID_TYPE, caught());
  }

  byte[] code(String nest) {
    ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    int access = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
    String[] interfaces = {making.getReturnType().getInternalName()};
    writer.visit(Opcodes.V17, access, name, null, "java/lang/Object", interfaces);
    writer.visitNestHost(nest);
    for (int i = 0; i < caught().length; i++) {
      String type = caught()[i].getDescriptor();
      writer.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, field(i), type, null, null);
    }
    construct(writer.visitMethod(Opcodes.ACC_PRIVATE, INIT, constructor(), null, null));
    make(writer.visitMethod(Opcodes.ACC_STATIC, MAKE, making.getDescriptor(), null, null));
    call(writer.visitMethod(Opcodes.ACC_PUBLIC, method, erased.getDescriptor(), null, null));
    writer.visitEnd();
    return writer.toByteArray();
  }

  private static String field(int index) {
    return "caught" + index;
  }

  private void construct(MethodVisitor code) {
    code.visitCode();
    code.visitVarInsn(Opcodes.ALOAD, 0);
    code.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/Object", INIT, "()V", false);
    int local = 1;
    for (int i = 0; i < caught().length; i++) {
      Type type = caught()[i];
      code.visitVarInsn(Opcodes.ALOAD, 0);
      code.visitVarInsn(type.getOpcode(Opcodes.ILOAD), local);
      code.visitFieldInsn(Opcodes.PUTFIELD, name, field(i), type.getDescriptor());
      local += type.getSize();
    }
    code.visitInsn(Opcodes.RETURN);
    end(code);
  }

  private void make(MethodVisitor code) {
    code.visitCode();
    code.visitTypeInsn(Opcodes.NEW, name);
    code.visitInsn(Opcodes.DUP);
    int local = 0;
    for (Type type : caught()) {
      code.visitVarInsn(type.getOpcode(Opcodes.ILOAD), local);
      local += type.getSize();
    }
    code.visitMethodInsn(Opcodes.INVOKESPECIAL, name, INIT, constructor(), false);
    code.visitInsn(Opcodes.ARETURN);
    end(code);
  }

  private void call(MethodVisitor code) {
    code.visitCode();
    if (body.getTag() == Opcodes.H_NEWINVOKESPECIAL) {
      code.visitTypeInsn(Opcodes.NEW, body.getOwner());
      code.visitInsn(Opcodes.DUP);
    }
    List<Type> wanted = wanted();
    for (int i = 0; i < caught().length; i++) {
      code.visitVarInsn(Opcodes.ALOAD, 0);
      code.visitFieldInsn(Opcodes.GETFIELD, name, field(i), caught()[i].getDescriptor());
      Conversion.convert(code, caught()[i], wanted.get(i));
    }
    int local = 1;
    for (int i = 0; i < erased.getArgumentTypes().length; i++) {
      Type given = erased.getArgumentTypes()[i];
      Type known = actual.getArgumentTypes()[i];
      code.visitVarInsn(given.getOpcode(Opcodes.ILOAD), local);
      local += given.getSize();
      Conversion.convert(code, given, known);
      Conversion.convert(code, known, wanted.get(caught().length + i));
    }
    callBody(code);
    giveBack(code);
    end(code);
  }

  /** What the body takes, the object it is called on among them. */
  private List<Type> wanted() {
    List<Type> wanted = new ArrayList<>();
    boolean onObject =
        body.getTag() != Opcodes.H_INVOKESTATIC && body.getTag() != Opcodes.H_NEWINVOKESPECIAL;
    if (onObject) {
      wanted.add(Type.getObjectType(body.getOwner()));
    }
    wanted.addAll(List.of(Type.getArgumentTypes(body.getDesc())));
    return wanted;
  }

  private void callBody(MethodVisitor code) {
    int call =
        switch (body.getTag()) {
          case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
          case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
          // A private method of a nest is called as any other.
          default -> body.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
        };
    code.visitMethodInsn(call, body.getOwner(), body.getName(), body.getDesc(), body.isInterface());
  }

  private void giveBack(MethodVisitor code) {
    Type result =
        body.getTag() == Opcodes.H_NEWINVOKESPECIAL
            ? Type.getObjectType(body.getOwner())
            : Type.getReturnType(body.getDesc());
    if (erased.getReturnType().getSort() == Type.VOID) {
      if (result.getSize() > 0) {
        code.visitInsn(result.getSize() == 1 ? Opcodes.POP : Opcodes.POP2);
      }
    } else {
      Conversion.convert(code, result, actual.getReturnType());
      Conversion.convert(code, actual.getReturnType(), erased.getReturnType());
    }
    code.visitInsn(erased.getReturnType().getOpcode(Opcodes.IRETURN));
  }

  private static void end(MethodVisitor code) {
    code.visitMaxs(0, 0);
    code.visitEnd();
  }
}
