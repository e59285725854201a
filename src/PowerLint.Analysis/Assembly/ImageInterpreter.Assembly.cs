using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    private readonly Dictionary<InlineAssembly, IReadOnlyList<AssemblyInstruction>> _templates = [];

    /// <summary>Executes inline assembly: the instructions that firmware uses have their meaning, others leave their outputs unknown.</summary>
    private MachineState? ExecuteAssembly(InlineAssembly assembly, MachineState state)
    {
        if (!_templates.TryGetValue(assembly, out var instructions))
        {
            instructions = AssemblyTemplate.Parse(assembly.Template);
            _templates.Add(assembly, instructions);
        }

        var inputs = assembly.Inputs.Select(input => Evaluate(input.Value, state)).ToArray();
        if (state.IsUnreachable)
        {
            return null;
        }

        var isAvr = _device.Core is "avr" or "xmega" || _device.Core.StartsWith("avr", StringComparison.Ordinal);
        if (isAvr)
        {
            return new AvrAssembly(this, assembly, inputs).Execute(instructions, state);
        }

        if (_device.Core.StartsWith("cortex", StringComparison.Ordinal))
        {
            return new ArmAssembly(this, assembly, inputs).Execute(instructions, state);
        }

        if (_device.Sleep.StatusRegister is not null)
        {
            return new StatusAssembly(this, assembly, inputs).Execute(instructions, state);
        }

        foreach (var instruction in instructions)
        {
            switch (instruction.Mnemonic)
            {
                case "wfi" or "wfe":
                    if (ExecuteSleep(assembly, assembly.Range, state) is not { } awake)
                    {
                        return null;
                    }

                    state = awake;
                    break;
                case "cpsie" or "eint":
                    SetInterrupts(state, isOn: true, assembly, assembly.Range);
                    break;
                case "cpsid" or "dint":
                    SetInterrupts(state, isOn: false, assembly, assembly.Range);
                    break;
                case "nop" or "dsb" or "isb" or "dmb" or "sev" or "":
                    break;
                default:
                    NoteUnknownAssembly(assembly, instruction.Mnemonic, state);
                    break;
            }
        }

        StoreOutputs(assembly, state, _ => null);
        return LetHandlersIn(state);
    }

    private void StoreOutputs(InlineAssembly assembly, MachineState state, Func<int, AbstractValue?> valueOf)
    {
        for (var i = 0; i < assembly.Outputs.Count; i++)
        {
            var output = assembly.Outputs[i];
            var address = Evaluate(output.Address, state);
            var width = (int)output.ObjectType.SizeBytes;
            var value = valueOf(i) ?? UnknownOf(output.ObjectType);
            StoreBytes(
                address,
                width,
                InMemory(Typed(value, output.ObjectType), width),
                assembly,
                assembly.Range,
                state
            );
        }
    }

    // A boot loader hands over to the application this way: what comes then is another image.
    private void NoteAssemblyJump(InlineAssembly assembly, string mnemonic) =>
        Events.Limit(
            "assembly-jump",
            $"The instruction {mnemonic} in inline assembly leaves this image: what follows it is not run.",
            _frame.Chain.UserPlace(assembly.Range).Range,
            isIncomplete: false
        );

    private void NoteUnknownAssembly(InlineAssembly assembly, string mnemonic, MachineState state)
    {
        AddUnknownCallee(state, $"inline assembly ({mnemonic})");
        Events.Limit(
            "unknown-assembly",
            $"The instruction {mnemonic} in inline assembly is not modelled; what it writes is not known.",
            _frame.Chain.UserPlace(assembly.Range).Range,
            isIncomplete: false
        );
    }
}
