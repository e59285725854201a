using PowerLint.Program;

namespace PowerLint.Analysis;

internal sealed partial class ImageInterpreter
{
    /// <summary>The AVR instructions that firmware writes inline, on values known as far as the operands are.</summary>
    private sealed class AvrAssembly(ImageInterpreter interpreter, InlineAssembly assembly, AbstractValue[] inputs)
    {
        private const ulong StatusRegister = 0x3F;

        // Classic parts put the 32 working registers before the I/O space; later ones begin the data space with it.
        private ulong IoOffset => interpreter._device.Core == "avr" ? 0x20u : 0;

        private readonly Dictionary<string, IntegerValue> _registers = new(StringComparer.Ordinal);
        private readonly AbstractValue?[] _outputs = new AbstractValue?[assembly.Outputs.Count];

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

            if (TryDelayLoop(instructions, state))
            {
                interpreter.StoreOutputs(assembly, state, _ => null);
                return interpreter.LetHandlersIn(state);
            }

            foreach (var instruction in instructions)
            {
                if (Execute(instruction, ref state))
                {
                    continue;
                }

                return null;
            }

            interpreter.StoreOutputs(assembly, state, i => _outputs[i]);
            return interpreter.LetHandlersIn(state);
        }

        // False where nothing goes on after the instruction.
        private bool Execute(AssemblyInstruction instruction, ref MachineState state)
        {
            var operands = instruction.Operands;
            if (instruction.Mnemonic is not ("" or "sleep"))
            {
                interpreter.BeginInstruction(state);
            }

            switch (instruction.Mnemonic)
            {
                case ""
                or "nop"
                or "wdr"
                or "push"
                or "pop"
                or "clr"
                or "ldi"
                or "mov"
                or "movw" when operands.Count < 2:
                    if (instruction.Mnemonic == "clr")
                    {
                        Write(operands[0], IntegerValue.Constant(8, 0));
                    }

                    return true;
                case "sleep":
                    if (interpreter.ExecuteSleep(assembly, assembly.Range, state) is not { } awake)
                    {
                        return false;
                    }

                    state = awake;
                    return true;
                case "sei":
                    interpreter.SetInterrupts(state, isOn: true, assembly, assembly.Range);
                    return true;
                case "cli":
                    interpreter.SetInterrupts(state, isOn: false, assembly, assembly.Range);
                    return true;
                case "reti" or "ret":
                    return true;
                case "in" or "lds" when operands.Count == 2:
                    Write(operands[0], Load(AddressOperand(operands[1], instruction.Mnemonic == "in"), state));
                    return true;
                case "out" or "sts" when operands.Count == 2:
                    Store(AddressOperand(operands[0], instruction.Mnemonic == "out"), Read(operands[1]), state);
                    return true;
                case "sbi" or "cbi" when operands.Count == 2:
                    ChangeBit(
                        AddressOperand(operands[0], isIo: true),
                        Read(operands[1]),
                        instruction.Mnemonic == "sbi",
                        state
                    );
                    return true;
                case "ldi" or "mov" when operands.Count == 2:
                    Write(operands[0], Read(operands[1]));
                    return true;
                case "ori" or "or" or "sbr":
                    return Combine(BinaryOperator.Or, operands);
                case "andi" or "and":
                    return Combine(BinaryOperator.And, operands);
                case "eor":
                    return Combine(BinaryOperator.Xor, operands);
                case "cbr":
                    Write(
                        operands[0],
                        IntegerArithmetic.Apply(
                            BinaryOperator.And,
                            Read(operands[0]),
                            IntegerArithmetic.Complement(Read(operands[1])),
                            isSigned: false
                        )
                    );
                    return true;
                case "com":
                    Write(operands[0], IntegerArithmetic.Complement(Read(operands[0])));
                    return true;
                case "lpm" or "elpm":
                    LoadProgramMemory(operands, state);
                    return true;
                case "ijmp" or "eijmp":
                case "jmp" or "rjmp" when operands is [var target] && AssemblyTemplate.Number(target) is not null:
                    interpreter.NoteAssemblyJump(assembly, instruction.Mnemonic);
                    return false;
                default:
                    Unknown(instruction.Mnemonic, state);
                    return true;
            }
        }

        // A count in a register, taken down to zero by a branch back: the loop that delay functions are made of.
        private bool TryDelayLoop(IReadOnlyList<AssemblyInstruction> instructions, MachineState state)
        {
            var body = instructions.Where(i => i.Mnemonic is not ("" or "nop" or "wdr")).ToArray();
            if (body is not [{ Mnemonic: "dec" or "sbiw" or "subi" } step, { Mnemonic: "brne" }])
            {
                return false;
            }

            var nops = instructions.Count(i => i.Mnemonic is "nop");
            var count = OutputOrInput(step.Operands[0]);
            var pass = nops + (step.Mnemonic == "sbiw" ? 4 : 3);
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

        private bool Combine(BinaryOperator @operator, IReadOnlyList<string> operands)
        {
            Write(
                operands[0],
                IntegerArithmetic.Apply(@operator, Read(operands[0]), Read(operands[1]), isSigned: false)
            );
            return true;
        }

        private void ChangeBit(IntegerValue? address, IntegerValue bit, bool isSet, MachineState state)
        {
            if (address is not { IsConstant: true } || !bit.IsConstant || bit.Minimum > 7)
            {
                Unknown("sbi", state);
                return;
            }

            var mask = IntegerValue.Constant(8, 1UL << (int)bit.Minimum);
            var slot = interpreter._map.SlotAt(address.Minimum);

            // The instruction changes one bit: flags and toggle strobes beside it are written zero.
            var isStrobe = slot is { } s && (interpreter._map.Aliases[s.Register].Any() || s.Register.ActsOnOne != 0);
            var old = isStrobe ? IntegerValue.Constant(8, 0) : Load(address, state);
            var value = IntegerArithmetic.Apply(
                isSet ? BinaryOperator.Or : BinaryOperator.And,
                old,
                isSet ? mask : IntegerArithmetic.Complement(mask),
                isSigned: false
            );
            Store(address, value, state);
        }

        private void LoadProgramMemory(IReadOnlyList<string> operands, MachineState state)
        {
            // Without operands the byte goes to register 0; the address is the Z pointer, given as an input.
            var pointer =
                _outputs.OfType<PointerValue>().FirstOrDefault()
                ?? inputs.OfType<PointerValue>().FirstOrDefault() as AbstractValue;
            var target = operands.Count > 0 ? operands[0] : "__tmp_reg__";
            if (pointer is not PointerValue place)
            {
                Write(target, IntegerValue.Unknown(8));
                return;
            }

            var offset = IntegerValue.Constant(PointerValue.OffsetBits, (ulong)_programReads);
            var moved = place.Move(offset, AddOffsets);
            var value = interpreter.LoadBytes(moved, 1, state, 0xFF) as IntegerValue ?? IntegerValue.Unknown(8);
            if (operands.Count > 1 && operands[1].EndsWith('+') && target.Length > 2 && target[1] is >= 'A' and <= 'D')
            {
                _programReads++;
            }

            Write(target, value);
        }

        private int _programReads;

        private IntegerValue Load(IntegerValue? address, MachineState state) =>
            address is null ? IntegerValue.Unknown(8) : interpreter.LoadAbsolute(address, 1, state, 0xFF);

        private void Store(IntegerValue? address, IntegerValue value, MachineState state)
        {
            if (address is null)
            {
                Unknown("sts", state);
                return;
            }

            interpreter.StoreAbsolute(
                address,
                1,
                IntegerArithmetic.Convert(value, 8, sourceIsSigned: false),
                assembly,
                assembly.Range,
                state,
                isCertain: true
            );
            if (address.IsConstant && address.Minimum == StatusRegister + IoOffset)
            {
                state.NeedsInterleaving = true;
            }
        }

        private IntegerValue? AddressOperand(string text, bool isIo)
        {
            ulong offset = isIo ? IoOffset : 0;
            if (string.Equals(text, "__SREG__", StringComparison.Ordinal))
            {
                return IntegerValue.Constant(16, StatusRegister + offset);
            }

            // %i turns a data-space address into an I/O address; the constraint then holds the former.
            if (text.StartsWith("%i", StringComparison.Ordinal))
            {
                offset = 0;
                text = "%" + text[2..];
            }

            var value =
                AssemblyTemplate.Number(text) is { } number ? IntegerValue.Constant(16, number)
                : OperandAt(text) is { Index: var index } at
                    ? (at.IsOutput ? _outputs[index] : inputs[index]) as IntegerValue
                : null;
            return value is null
                ? null
                : AddOffsets(
                    IntegerArithmetic.Convert(value, 16, sourceIsSigned: false),
                    IntegerValue.Constant(16, offset)
                );
        }

        private AbstractValue? OutputOrInput(string text) =>
            OperandAt(text) is { } at ? (at.IsOutput ? _outputs[at.Index] : inputs[at.Index]) : null;

        private IntegerValue Read(string text)
        {
            if (text is "__zero_reg__" or "r1" && !_registers.ContainsKey(text))
            {
                return IntegerValue.Constant(8, 0);
            }

            if (AssemblyTemplate.Number(text) is { } number)
            {
                return IntegerValue.Constant(8, number);
            }

            if (OperandAt(text) is { } at)
            {
                var value = (at.IsOutput ? _outputs[at.Index] : inputs[at.Index]) as IntegerValue;
                if (value is null)
                {
                    return IntegerValue.Unknown(8);
                }

                var shifted =
                    at.Byte == 0 || value.Bits <= 8 * at.Byte
                        ? value
                        : IntegerArithmetic.Apply(
                            BinaryOperator.ShiftRight,
                            value,
                            IntegerValue.Constant(value.Bits, (ulong)(8 * at.Byte)),
                            isSigned: false
                        );
                return IntegerArithmetic.Convert(shifted, 8, sourceIsSigned: false);
            }

            return _registers.GetValueOrDefault(text) ?? IntegerValue.Unknown(8);
        }

        private void Write(string text, IntegerValue value)
        {
            if (OperandAt(text) is not { IsOutput: true } at)
            {
                _registers[text] = value;
                return;
            }

            var type = assembly.Outputs[at.Index].ObjectType;
            var bits = Math.Max(8, BitsOf(type));
            if (bits == 8)
            {
                _outputs[at.Index] = value;
                return;
            }

            var old = _outputs[at.Index] as IntegerValue ?? IntegerValue.Unknown(bits);
            old = IntegerArithmetic.Convert(old, bits, sourceIsSigned: false);
            var mask = IntegerValue.Constant(bits, ~(0xFFUL << (8 * at.Byte)));
            var kept = IntegerArithmetic.Apply(BinaryOperator.And, old, mask, isSigned: false);
            var part = IntegerArithmetic.Apply(
                BinaryOperator.ShiftLeft,
                IntegerArithmetic.Convert(value, bits, sourceIsSigned: false),
                IntegerValue.Constant(bits, (ulong)(8 * at.Byte)),
                isSigned: false
            );
            _outputs[at.Index] = IntegerArithmetic.Apply(BinaryOperator.Or, kept, part, isSigned: false);
        }

        // %0, %A0 (its lowest byte), %[name], %B[name]: outputs are numbered first.
        private (bool IsOutput, int Index, int Byte)? OperandAt(string text)
        {
            if (!text.StartsWith('%') || text.Length < 2)
            {
                return null;
            }

            text = text[1..];
            var byteIndex = 0;
            if (text[0] is >= 'A' and <= 'D' && text.Length > 1)
            {
                byteIndex = text[0] - 'A';
                text = text[1..];
            }
            else if (char.IsAsciiLetter(text[0]) && text.Length > 1)
            {
                text = text[1..];
            }

            if (text.StartsWith('[') && text.EndsWith(']'))
            {
                var name = text[1..^1];
                for (var i = 0; i < assembly.Outputs.Count; i++)
                {
                    if (string.Equals(assembly.Outputs[i].Name, name, StringComparison.Ordinal))
                    {
                        return (true, i, byteIndex);
                    }
                }

                for (var i = 0; i < assembly.Inputs.Count; i++)
                {
                    if (string.Equals(assembly.Inputs[i].Name, name, StringComparison.Ordinal))
                    {
                        return (false, i, byteIndex);
                    }
                }

                return null;
            }

            if (!int.TryParse(text, System.Globalization.CultureInfo.InvariantCulture, out var number))
            {
                return null;
            }

            return number < assembly.Outputs.Count ? (true, number, byteIndex)
                : number - assembly.Outputs.Count < assembly.Inputs.Count
                    ? (false, number - assembly.Outputs.Count, byteIndex)
                : null;
        }

        private void Unknown(string mnemonic, MachineState state)
        {
            for (var i = 0; i < _outputs.Length; i++)
            {
                _outputs[i] = null;
            }

            if (mnemonic is "st" or "std" or "call" or "rcall" or "icall" or "jmp" or "rjmp" or "spm" or "sts" or "sbi")
            {
                interpreter.NoteEffect(state);
                interpreter.NoteUnknownAssembly(assembly, mnemonic, state);
            }
        }
    }
}
