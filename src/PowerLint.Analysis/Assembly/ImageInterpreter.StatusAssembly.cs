using System.Globalization;
using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    /// <summary>
    /// The instructions that firmware writes inline for cores with a status register among the CPU's registers (MSP430, r2):
    /// source first, destination last, <c>.b</c> for bytes (MSP430 instruction set, from memory).
    /// </summary>
    private sealed class StatusAssembly(ImageInterpreter interpreter, InlineAssembly assembly, AbstractValue[] inputs)
    {
        private const int WordBits = 16;

        // Barriers, the stack, branches and tests: nothing that the analysis follows.
        private static readonly HashSet<string> s_harmless = new(StringComparer.Ordinal)
        {
            "",
            "nop",
            "push",
            "pop",
            "cmp",
            "tst",
            "bit",
            "clrc",
            "setc",
            "clrn",
            "clrz",
            "jmp",
            "jnz",
            "jne",
            "jz",
            "jeq",
            "jc",
            "jnc",
            "jn",
            "jge",
            "jl",
        };

        private readonly AbstractValue?[] _outputs = new AbstractValue?[assembly.Outputs.Count];
        private readonly Dictionary<string, AbstractValue> _registers = new(StringComparer.OrdinalIgnoreCase);

        public MachineState? Execute(IReadOnlyList<AssemblyInstruction> instructions, MachineState state)
        {
            for (var i = 0; i < assembly.Outputs.Count; i++)
            {
                var output = assembly.Outputs[i];
                if (output.Constraint.StartsWith('+'))
                {
                    var address = interpreter.Evaluate(output.Address, state);
                    _outputs[i] = Typed(
                        interpreter.LoadBytes(address, (int)output.ObjectType.SizeBytes, state, ulong.MaxValue),
                        output.ObjectType
                    );
                }
            }

            for (var i = 0; i < inputs.Length; i++)
            {
                // A digit ties an input to an output: both are one register.
                if (
                    int.TryParse(assembly.Inputs[i].Constraint, CultureInfo.InvariantCulture, out var tied)
                    && tied < _outputs.Length
                )
                {
                    _outputs[tied] = inputs[i];
                }
            }

            if (TryDelayLoop(instructions, state))
            {
                interpreter.StoreOutputs(assembly, state, _ => null);
                return interpreter.LetHandlersIn(state);
            }

            foreach (var instruction in instructions)
            {
                if (Execute(instruction, state) is not { } next)
                {
                    return null;
                }

                state = next;
            }

            interpreter.StoreOutputs(assembly, state, i => _outputs[i]);
            return interpreter.LetHandlersIn(state);
        }

        private MachineState? Execute(AssemblyInstruction instruction, MachineState state)
        {
            var operands = instruction.Operands;
            var (mnemonic, bits) = instruction.Mnemonic switch
            {
                var byWord when byWord.EndsWith(".w", StringComparison.Ordinal) => (byWord[..^2], WordBits),
                var byByte when byByte.EndsWith(".b", StringComparison.Ordinal) => (byByte[..^2], 8),
                var plain => (plain, WordBits),
            };
            switch (mnemonic)
            {
                case "eint":
                    return ChangeEnable(isOn: true, state);
                case "dint":
                    return ChangeEnable(isOn: false, state);
                case "mov" when operands.Count == 2:
                    return Write(operands[1], Read(operands[0], bits, state), bits, StatusChange.Load, state);
                case "clr" when operands.Count == 1:
                    return Write(operands[0], IntegerValue.Constant(WordBits, 0), bits, StatusChange.Load, state);
                case "bis" when operands.Count == 2:
                    return Write(operands[1], Read(operands[0], bits, state), bits, StatusChange.Set, state);
                case "bic" when operands.Count == 2:
                    return Write(operands[1], Read(operands[0], bits, state), bits, StatusChange.Clear, state);
                case "and" or "xor" or "add" or "sub" when operands.Count == 2 && !IsStatus(operands[1]):
                    return Write(operands[1], Combine(mnemonic, operands, bits, state), bits, StatusChange.Load, state);
                case "inc"
                or "dec"
                or "inv"
                or "swpb"
                or "rla"
                or "rra"
                or "rrc"
                or "rlc"
                or "sxt" when operands.Count == 1 && !IsStatus(operands[0]):
                    return Write(operands[0], AnyValue.Instance, bits, StatusChange.Load, state);
                case var harmless when s_harmless.Contains(harmless):
                    return state;
                default:
                    interpreter.NoteUnknownAssembly(assembly, instruction.Mnemonic, state);
                    return state;
            }
        }

        private MachineState ChangeEnable(bool isOn, MachineState state)
        {
            interpreter.SetInterrupts(state, isOn, assembly, assembly.Range);
            return state;
        }

        private AbstractValue Combine(string mnemonic, IReadOnlyList<string> operands, int bits, MachineState state)
        {
            if (
                Read(operands[1], bits, state) is not IntegerValue target
                || Read(operands[0], bits, state) is not IntegerValue source
            )
            {
                return AnyValue.Instance;
            }

            var @operator = mnemonic switch
            {
                "and" => BinaryOperator.And,
                "xor" => BinaryOperator.Xor,
                "add" => BinaryOperator.Add,
                _ => BinaryOperator.Subtract,
            };
            return IntegerArithmetic.Apply(
                @operator,
                IntegerArithmetic.Convert(target, WordBits, sourceIsSigned: false),
                IntegerArithmetic.Convert(source, WordBits, sourceIsSigned: false),
                isSigned: false
            );
        }

        // A count in a register, taken down to zero by a branch back.
        private bool TryDelayLoop(IReadOnlyList<AssemblyInstruction> instructions, MachineState state)
        {
            var body = instructions.Where(i => i.Mnemonic is not ("" or "nop" or "mov" or "mov.w")).ToArray();
            if (body is not [{ Mnemonic: "dec" or "dec.w" or "sub" or "sub.w" } step, { Mnemonic: "jnz" or "jne" }])
            {
                return false;
            }

            var start = instructions.FirstOrDefault(i => i.Mnemonic is "mov" or "mov.w" && i.Operands.Count == 2);
            var count = Read((start is null ? step.Operands[^1] : start.Operands[0]), WordBits, state);

            // A subtraction takes one cycle, a jump two (MSP430x2xx user's guide SLAU144, from memory).
            var pass = 3 + instructions.Count(i => i.Mnemonic is "nop");
            double? cycles = count is IntegerValue { IsConstant: true } known
                ? pass * (double)(known.Minimum == 0 ? known.Mask + 1.0 : known.Minimum)
                : null;
            var callee = interpreter.HeaderCallee("");
            interpreter.NoteWait(
                callee.Length == 0 ? WaitKind.CountedLoop : WaitKind.LibraryDelay,
                assembly.Range,
                callee.Length == 0 ? null : callee,
                cycles
            );
            SpendCycles(state, (long)Math.Min(cycles ?? 0, int.MaxValue));
            return true;
        }

        private static bool IsStatus(string operand) =>
            operand.Equals("r2", StringComparison.OrdinalIgnoreCase)
            || operand.Equals("sr", StringComparison.OrdinalIgnoreCase);

        private AbstractValue Read(string operand, int bits, MachineState state)
        {
            if (IsStatus(operand))
            {
                return interpreter.ReadStatus(state);
            }

            if (operand.StartsWith('&') && Address(operand) is { } address)
            {
                return interpreter.LoadAbsolute(address, bits / 8, state, ulong.MaxValue);
            }

            operand = operand.TrimStart('#');
            if (AssemblyTemplate.Number(operand) is { } number)
            {
                return IntegerValue.Constant(WordBits, number & IntegerValue.MaskOf(WordBits));
            }

            return Index(operand) switch
            {
                { } i when i < _outputs.Length => _outputs[i] ?? IntegerValue.Unknown(WordBits),
                { } i when i - _outputs.Length < inputs.Length => inputs[i - _outputs.Length],
                _ => _registers.GetValueOrDefault(operand, IntegerValue.Unknown(WordBits)),
            };
        }

        private MachineState? Write(
            string operand,
            AbstractValue value,
            int bits,
            StatusChange change,
            MachineState state
        )
        {
            if (IsStatus(operand))
            {
                return interpreter.ChangeStatus(change, value, state, assembly, assembly.Range);
            }

            if (change != StatusChange.Load)
            {
                value = Changed(Read(operand, bits, state), value, change);
            }

            if (operand.StartsWith('&'))
            {
                if (Address(operand) is { } address)
                {
                    var stored = value is IntegerValue integer
                        ? IntegerArithmetic.Convert(integer, bits, sourceIsSigned: false)
                        : IntegerValue.Unknown(bits);
                    interpreter.StoreAbsolute(
                        address,
                        bits / 8,
                        stored,
                        assembly,
                        assembly.Range,
                        state,
                        isCertain: true
                    );
                    return state.IsUnreachable ? null : state;
                }

                interpreter.NoteEffect(state);
                interpreter.NoteUnknownAssembly(assembly, "a write to " + operand, state);
                return state;
            }

            if (Index(operand) is not { } i)
            {
                _registers[operand] = value;
            }
            else if (i < _outputs.Length)
            {
                _outputs[i] = value;
            }

            return state;
        }

        private static AbstractValue Changed(AbstractValue old, AbstractValue operand, StatusChange change)
        {
            if (old is not IntegerValue before || operand is not IntegerValue mask)
            {
                return AnyValue.Instance;
            }

            before = IntegerArithmetic.Convert(before, WordBits, sourceIsSigned: false);
            mask = IntegerArithmetic.Convert(mask, WordBits, sourceIsSigned: false);
            return change == StatusChange.Set
                ? IntegerArithmetic.Apply(BinaryOperator.Or, before, mask, isSigned: false)
                : IntegerArithmetic.Apply(
                    BinaryOperator.And,
                    before,
                    IntegerArithmetic.Complement(mask),
                    isSigned: false
                );
        }

        // &WDTCTL, &__WDTCTL, &0x0120.
        private IntegerValue? Address(string operand)
        {
            var name = operand.TrimStart('&');
            return AssemblyTemplate.Number(name) is { } number ? IntegerValue.Constant(WordBits, number)
                : interpreter._symbols.TryGetValue(name, out var symbol)
                || interpreter._symbols.TryGetValue(name.TrimStart('_'), out symbol)
                    ? IntegerValue.Constant(WordBits, symbol)
                : null;
        }

        private static int? Index(string operand) =>
            operand.StartsWith('%') && int.TryParse(operand.AsSpan(1), CultureInfo.InvariantCulture, out var index)
                ? index
                : null;
    }
}
