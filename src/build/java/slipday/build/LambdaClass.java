package slipday.build;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * A class whose objects do what some lambdas of one kind do: each keeps what its lambda caught and
 * the number of that lambda, and calls its body.
 */
final class LambdaClass {
  /**
   * A class more takes some hundredths of a millisecond to load; a method too long is no longer
   * compiled into its caller.
   */
  private static final int MOST = 8;

  private static final String MAKE = "make";
  private static final String INIT = "<init>";
  private static final String WHICH = "which";

  private final String name;
  private final List<Lambda> lambdas = new ArrayList<>();

  LambdaClass(String name) {
    this.name = name;
  }

  String name() {
    return name;
  }

  boolean isFull() {
    return lambdas.size() == MOST;
  }

  /** Takes in a lambda, and says what the method is called that makes an object of it. */
  String add(Lambda lambda) {
    lambdas.add(lambda);
    return MAKE + (lambdas.size() - 1);
  }

  private List<Slot> slots() {
    Set<Slot> slots = new LinkedHashSet<>();
    lambdas.forEach(l -> slots.addAll(l.slots()));
    return List.copyOf(slots);
  }

  private String constructor() {
    StringBuilder type = new StringBuilder("(I");
    slots().forEach(s -> type.append(s.type().getDescriptor()));
    return type.append(")V").toString();
  }

  byte[] code(String nest) {
    ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    int access = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
    Lambda first = lambdas.get(0);
    String[] interfaces = {first.making().getReturnType().getInternalName()};
    writer.visit(Opcodes.V17, access, name, null, "java/lang/Object", interfaces);
    writer.visitNestHost(nest);
    int kept = Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL;
    writer.visitField(kept, WHICH, "I", null, null);
    slots().forEach(s -> writer.visitField(kept, s.field(), s.type().getDescriptor(), null, null));
    construct(writer.visitMethod(Opcodes.ACC_PRIVATE, INIT, constructor(), null, null));
    for (int i = 0; i < lambdas.size(); i++) {
      String making = lambdas.get(i).making().getDescriptor();
      make(writer.visitMethod(Opcodes.ACC_STATIC, MAKE + i, making, null, null), i);
    }
    String called = first.erased().getDescriptor();
    call(writer.visitMethod(Opcodes.ACC_PUBLIC, first.method(), called, null, null));
    writer.visitEnd();
    return writer.toByteArray();
  }

  private void construct(MethodVisitor code) {
    code.visitCode();
    code.visitVarInsn(Opcodes.ALOAD, 0);
    code.visitMethodInsn(Opcodes.INVOKESPECIAL, "java/lang/Object", INIT, "()V", false);
    keep(code, WHICH, Type.INT_TYPE, 1);
    int local = 2;
    for (Slot slot : slots()) {
      keep(code, slot.field(), slot.type(), local);
      local += slot.type().getSize();
    }
    code.visitInsn(Opcodes.RETURN);
    end(code);
  }

  private void keep(MethodVisitor code, String field, Type type, int local) {
    code.visitVarInsn(Opcodes.ALOAD, 0);
    code.visitVarInsn(type.getOpcode(Opcodes.ILOAD), local);
    code.visitFieldInsn(Opcodes.PUTFIELD, name, field, type.getDescriptor());
  }

  private void make(MethodVisitor code, int which) {
    Type[] caught = lambdas.get(which).making().getArgumentTypes();
    List<Slot> used = lambdas.get(which).slots();
    code.visitCode();
    code.visitTypeInsn(Opcodes.NEW, name);
    code.visitInsn(Opcodes.DUP);
    code.visitIntInsn(Opcodes.BIPUSH, which);
    for (Slot slot : slots()) {
      int at = used.indexOf(slot);
      if (at < 0) {
        slot.leaveEmpty(code);
      } else {
        code.visitVarInsn(caught[at].getOpcode(Opcodes.ILOAD), local(caught, at));
      }
    }
    code.visitMethodInsn(Opcodes.INVOKESPECIAL, name, INIT, constructor(), false);
    code.visitInsn(Opcodes.ARETURN);
    end(code);
  }

  private static int local(Type[] types, int at) {
    int local = 0;
    for (int i = 0; i < at; i++) {
      local += types[i].getSize();
    }
    return local;
  }

  private void call(MethodVisitor code) {
    code.visitCode();
    Label[] labels = new Label[lambdas.size()];
    for (int i = 0; i < labels.length; i++) {
      labels[i] = new Label();
    }
    int last = labels.length - 1;
    if (last > 0) {
      code.visitVarInsn(Opcodes.ALOAD, 0);
      code.visitFieldInsn(Opcodes.GETFIELD, name, WHICH, "I");
      code.visitTableSwitchInsn(0, last, labels[last], labels);
    }
    for (int i = 0; i <= last; i++) {
      if (last > 0) {
        code.visitLabel(labels[i]);
        code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
      }
      lambdas.get(i).call(code, name);
    }
    end(code);
  }

  private static void end(MethodVisitor code) {
    code.visitMaxs(0, 0);
    code.visitEnd();
  }
}
