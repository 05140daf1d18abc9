package slipday.build;

import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * One lambda of a class.
 *
 * @param making what the lambda catches, and the interface it becomes
 * @param method of that interface
 * @param erased the method's type as the interface has it
 * @param body what is called
 * @param actual the method's type as the lambda has it
 */
record Lambda(Type making, String method, Type erased, Handle body, Type actual) {
  /** Those of one kind can be told apart by a number within one class. */
  String kind() {
    return making.getReturnType().getInternalName() + method + erased.getDescriptor();
  }

  /** Where a lambda keeps each thing it caught, by its type and its number among those of it. */
  List<Slot> slots() {
    List<Slot> slots = new ArrayList<>();
    for (Type caught : making.getArgumentTypes()) {
      Type kept = Slot.kept(caught);
      int before = (int) slots.stream().filter(s -> s.type().equals(kept)).count();
      slots.add(new Slot(kept, before));
    }
    return slots;
  }

  /** Calls the body with what was caught and what is given, and gives back what it does. */
  void call(MethodVisitor code, String owner) {
    if (body.getTag() == Opcodes.H_NEWINVOKESPECIAL) {
      code.visitTypeInsn(Opcodes.NEW, body.getOwner());
      code.visitInsn(Opcodes.DUP);
    }
    List<Type> wanted = wanted();
    Type[] caught = making.getArgumentTypes();
    List<Slot> slots = slots();
    for (int i = 0; i < caught.length; i++) {
      code.visitVarInsn(Opcodes.ALOAD, 0);
      code.visitFieldInsn(
          Opcodes.GETFIELD, owner, slots.get(i).field(), slots.get(i).type().getDescriptor());
      slots.get(i).takeOut(code, caught[i]);
      Conversion.convert(code, caught[i], wanted.get(i));
    }
    int local = 1;
    for (int i = 0; i < erased.getArgumentTypes().length; i++) {
      Type given = erased.getArgumentTypes()[i];
      Type known = actual.getArgumentTypes()[i];
      code.visitVarInsn(given.getOpcode(Opcodes.ILOAD), local);
      local += given.getSize();
      Conversion.convert(code, given, known);
      Conversion.convert(code, known, wanted.get(caught.length + i));
    }
    callBody(code);
    giveBack(code);
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
}
