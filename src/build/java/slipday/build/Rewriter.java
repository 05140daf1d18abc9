package slipday.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Copies a class with plain calls where it has a lambda or a generated method of a record. */
final class Rewriter extends ClassVisitor {
  private static final String LAMBDAS = "java/lang/invoke/LambdaMetafactory";
  private static final String RECORDS = "java/lang/runtime/ObjectMethods";

  private final String name;
  private final List<LambdaClass> made = new ArrayList<>();

  /** The last class made for each kind of lambda. */
  private final Map<String, LambdaClass> open = new HashMap<>();

  private final List<RecordMethod> methods = new ArrayList<>();
  private String nest;

  Rewriter(ClassVisitor next, String name) {
    super(Opcodes.ASM9, next);
    this.name = name;
    this.nest = name;
  }

  /** The classes made in place of lambdas, by name. */
  Map<String, byte[]> made() {
    Map<String, byte[]> code = new LinkedHashMap<>();
    made.forEach(m -> code.put(m.name(), m.code(nest)));
    return code;
  }

  /** The class at the head of this one's nest. */
  String nest() {
    return nest;
  }

  boolean isChanged() {
    return !made.isEmpty() || !methods.isEmpty();
  }

  @Override
  public void visitNestHost(String host) {
    nest = host;
    super.visitNestHost(host);
  }

  @Override
  public MethodVisitor visitMethod(
      int access, String method, String type, String generic, String[] thrown) {
    MethodVisitor next = super.visitMethod(access, method, type, generic, thrown);
    return new MethodVisitor(Opcodes.ASM9, next) {
      @Override
      public void visitInvokeDynamicInsn(
          String called, String calledType, Handle linker, Object... facts) {
        // A lambda that can be serialized is linked by another method, and stays.
        boolean lambda =
            linker.getOwner().equals(LAMBDAS) && linker.getName().equals("metafactory");
        if (lambda) {
          Lambda made =
              new Lambda(
                  Type.getMethodType(calledType),
                  called,
                  (Type) facts[0],
                  (Handle) facts[1],
                  (Type) facts[2]);
          LambdaClass itsClass = classFor(made);
          String make = itsClass.add(made);
          super.visitMethodInsn(Opcodes.INVOKESTATIC, itsClass.name(), make, calledType, false);
        } else if (linker.getOwner().equals(RECORDS)) {
          RecordMethod own = new RecordMethod(called, calledType, facts);
          methods.add(own);
          super.visitMethodInsn(Opcodes.INVOKESTATIC, name, own.name(), calledType, false);
        } else {
          super.visitInvokeDynamicInsn(called, calledType, linker, facts);
        }
      }
    };
  }

  private LambdaClass classFor(Lambda lambda) {
    LambdaClass last = open.get(lambda.kind());
    if (last != null && !last.isFull()) {
      return last;
    }
    LambdaClass next = new LambdaClass(name + "$$" + made.size());
    made.add(next);
    open.put(lambda.kind(), next);
    return next;
  }

  @Override
  public void visitEnd() {
    for (RecordMethod method : methods) {
      int access = Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC;
      method.write(super.visitMethod(access, method.name(), method.type(), null, null));
    }
    super.visitEnd();
  }
}
