using System.Collections.Immutable;

namespace PowerLint.Devices;

/// <summary>A section that an SVD file tells nothing of.</summary>
/// <param name="Missing">What is missing, for the list on the terminal.</param>
/// <param name="Template">Its heading and an example, commented out.</param>
internal sealed record SkeletonSection(string Missing, string Template);

/// <summary>The sections that are left to fill in, in the order of a device file.</summary>
internal static class SkeletonSections
{
    public static ImmutableArray<SkeletonSection> All { get; } =
    [
        new(
            "reset-clock: the CPU clock after reset",
            """
            # The CPU clock after reset.
            # reset-clock: { hertz: 0, source: "" }

            """
        ),
        new(
            "packages: the pins that each package brings out",
            """
            # packages:
            #   NAME: [PA0..PA15]

            """
        ),
        new(
            "ports and pins: direction, level, pull, input buffer, interrupt, and how to park each pin",
            """
            # ports:
            #   A:
            #     name: "PA{bit}"
            #     bits: 0..15
            #     output: {}
            #     high: {}
            #     pull-up: {}
            #     pull-down: {}
            #     input-buffer-off: {}
            #     interrupt-enabled: {}
            #     level: REGISTER.FIELD
            #     park-output-low: {}

            """
        ),
        new(
            "functions: which peripherals use which pins, debug and reset pins among them",
            """
            # functions:
            #   PERIPHERAL:
            #     SIGNAL: { pin: PA0, kind: output, when: {} }

            """
        ),
        new(
            "aliases: registers whose writes set, clear or toggle bits of others",
            """
            # aliases:
            #   SET_REGISTER: { effect: set, target: REGISTER }

            """
        ),
        new(
            "follows and protections: ready bits, write protection with its keys",
            """
            # follows:
            #   REGISTER.READY: REGISTER.ENABLE
            # protections:
            #   NAME: { kind: key-sequence, key-register: REGISTER, keys: [], protects: [] }

            """
        ),
        new(
            "gates: clock gates, what lies behind each, whether writes behind a closed one are lost",
            """
            # gates:
            #   NAME: { open: {}, peripherals: [], loses-writes: true }

            """
        ),
        new(
            "clock-outputs and oscillators, with the modes in which they run",
            """
            # clock-outputs:
            #   NAME: { pin: PA0, on: {}, runs-in: [] }
            # oscillators:
            #   NAME: { on: {}, runs-in: [], consumers: {} }

            """
        ),
        new(
            "sleep and modes: how it goes to sleep, the modes in order of depth and what selects each",
            """
            # modes:
            #   NAME: { depth: 1, select: {} }

            """
        ),
        new(
            "peripherals: when each is on, its gate, the modes in which it draws and works",
            """
            # peripherals:
            #   NAME: { on: {}, gate: NAME, draws-in: [], works-in: [], registers: ["NAME.*"] }

            """
        ),
        new(
            "currents, adders, wake-up-times and pin-electrics: the data sheet's figures, each with its source",
            """
            # currents:
            #   - { mode: active, clock: "", hertz: 0, volts: 0, typical-microamps: 0, source: "" }
            # adders:
            #   - { name: "", volts: 0, typical-microamps: 0, source: "" }
            # wake-up-times:
            #   - { modes: NAME, clock-cycles: 0, typical-microseconds: 0, maximum-microseconds: 0, source: "" }
            # pin-electrics: { pull-up-ohms-minimum: 0, pull-up-ohms-maximum: 0, input-leakage-microamps-maximum: 0, source: "" }

            """
        ),
    ];
}
