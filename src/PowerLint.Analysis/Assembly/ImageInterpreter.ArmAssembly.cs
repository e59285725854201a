using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    /// <summary>The instructions of the M profile that firmware writes inline, with the values of the operands.</summary>
    private sealed class ArmAssembly(ImageInterpreter interpreter, InlineAssembly assembly, AbstractValue[] inputs)
    {
        private const int WordBits = 32;

        // Barriers, hints, and instructions that change nothing but their result, which is then unknown.
        private static readonly HashSet<string> s_harmless = new(StringComparer.Ordinal)
        {
            "",
            "nop",
            "dsb",
            "isb",
            "dmb",
            "sev",
            "yield",
            "bkpt",
            "rev",
            "rev16",
            "revsh",
            "rbit",
            "clz",
            "ror",
            "ssat",
            "usat",
            "clrex",
            "ldrex",
            "ldrexb",
            "ldrexh",
        };

        private readonly AbstractValue?[] _outputs = new AbstractValue?[assembly.Outputs.Count];
        private readonly Dictionary<string, AbstractValue> _registers = new(StringComparer.OrdinalIgnoreCase);

        public MachineState? Execute(IReadOnlyList<AssemblyInstruction> instructions, MachineState state)
        {
            for (var i = 0; i < inputs.Length; i++)
            {
                // A digit ties an input to an output: both are one register.
                if (
                    int.TryParse(
                        assembly.Inputs[i].Constraint,
                        System.Globalization.CultureInfo.InvariantCulture,
                        out var tied
                    )
                    && tied < _outputs.Length
                )
                {
                    _outputs[tied] = inputs[i];
                }
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
            var mnemonic = instruction.Mnemonic.EndsWith(".n", StringComparison.Ordinal)
                ? instruction.Mnemonic[..^2]
                : instruction.Mnemonic;
            if (mnemonic is not ("" or "wfi" or "wfe"))
            {
                interpreter.BeginInstruction(state);
            }

            switch (mnemonic)
            {
                case "wfe":
                    return interpreter.ExecuteWaitForEvent(assembly, assembly.Range, state);
                case "wfi":
                    return interpreter.ExecuteSleep(assembly, assembly.Range, state);
                case "cpsie" or "cpsid" when operands is [var mask] && mask.Contains('i', StringComparison.Ordinal):
                    interpreter.SetInterrupts(state, mnemonic == "cpsie", assembly, assembly.Range);

                    // What is pending comes in before the next instruction.
                    return interpreter.LetHandlersIn(state);
                case "cpsie" or "cpsid":
                    return state;
                case "mrs" when operands.Count == 2:
                    Write(operands[0], IsPriorityMask(operands[1]) ? interpreter.PriorityMask(state) : Unknown);
                    return state;
                case "msr" when operands.Count == 2:
                    if (IsPriorityMask(operands[0]))
                    {
                        interpreter.SetPriorityMask(Read(operands[1]), state, assembly, assembly.Range);
                        return interpreter.LetHandlersIn(state);
                    }

                    return state;
                case "mov" or "movs" when operands.Count == 2:
                    Write(operands[0], Read(operands[1]));
                    return state;
                case var harmless when s_harmless.Contains(harmless):
                    return state;
                default:
                    interpreter.NoteUnknownAssembly(assembly, instruction.Mnemonic, state);
                    return state;
            }
        }

        private static IntegerValue Unknown => IntegerValue.Unknown(WordBits);

        private static bool IsPriorityMask(string name) => name.Equals("primask", StringComparison.OrdinalIgnoreCase);

        private AbstractValue Read(string operand)
        {
            if (AssemblyTemplate.Number(operand) is { } number)
            {
                return IntegerValue.Constant(WordBits, number);
            }

            return Index(operand) switch
            {
                { } i when i < _outputs.Length => _outputs[i] ?? Unknown,
                { } i when i - _outputs.Length < inputs.Length => inputs[i - _outputs.Length],
                _ => _registers.GetValueOrDefault(operand, Unknown),
            };
        }

        private void Write(string operand, AbstractValue value)
        {
            if (Index(operand) is not { } i)
            {
                _registers[operand] = value;
            }
            else if (i < _outputs.Length)
            {
                _outputs[i] = value;
            }
        }

        private static int? Index(string operand) =>
            operand.StartsWith('%')
            && int.TryParse(operand.AsSpan(1), System.Globalization.CultureInfo.InvariantCulture, out var index)
                ? index
                : null;
    }

    /// <summary>The M profile's PRIMASK: one where interrupts are off.</summary>
    private IntegerValue PriorityMask(MachineState state) =>
        InterruptsOn(state) switch
        {
            Tristate.Yes => IntegerValue.Constant(32, 0),
            Tristate.No => IntegerValue.Constant(32, 1),
            _ => IntegerValue.Reduce(32, ~1UL, 0, 0, 1)!,
        };

    private void SetPriorityMask(AbstractValue value, MachineState state, object node, SourceRange range)
    {
        var lowest = value is IntegerValue integer ? integer.KnownBits : KnownBits.Unknown;
        if ((lowest.Known & 1) != 0)
        {
            SetInterrupts(state, (lowest.Value & 1) == 0, node, range);
            return;
        }

        // Either: what both leave.
        var off = state.Copy();
        SetInterrupts(off, isOn: false, node, range);
        SetInterrupts(state, isOn: true, node, range);
        state.Become(Join(state.Copy(), off));
    }
}
