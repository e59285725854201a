using System.Globalization;

namespace PowerLint.Tests;

/// <summary>
/// Input that nobody writes by hand: it ends, it is told where something was cut, and what can be known is. Each asserts the
/// notification and the state, as an analysis that forgets everything would end, too. Expected states follow from the C alone.
/// </summary>
public sealed class PathologicalInputTests
{
    // Sleep is not enabled: the instruction does nothing, and what follows runs.
    private const string FirstSleep = "int main(void) { DDRC = 0x15; SMCR = 4; sleep();\n";

    [Fact]
    public void A_switch_of_ten_thousand_cases_over_a_known_value_takes_one()
    {
        var run = GeneratedFirmware.Run(
            $"static unsigned pick(void) {{ return 4242; }} {FirstSleep} switch (pick()) {{ {Many(10_000, i => $"case {i}: PORTB = {i & 0xFF}; break;")} }} for (;;) sleep(); }}"
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "10010010");
    }

    [Fact]
    public void A_switch_of_ten_thousand_cases_over_an_unknown_value_keeps_what_all_share()
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} PORTB = 0x80; switch (TCNT1) {{ {Many(10_000, i => $"case {i}: PORTB = {0x81 | (i & 0x0E)}; break;")} default: PORTB |= 1; }} for (;;) sleep(); }}"
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "1000???1");
    }

    [Fact]
    public void Ten_thousand_labels_of_one_statement_are_one_way_in()
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} switch (TCNT1) {{ {Many(10_000, i => $"case {i}:")} PORTB = 3; break; default: PORTB = 1; }} for (;;) sleep(); }}"
        );
        Assert.Empty(run.Read.Gaps);
        run.ExpectLimits();
        run.Expect(1, "PORTB", "000000?1");
    }

    [Fact]
    public void Falling_through_ten_thousand_cases_joins_every_way_in()
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} switch (TCNT1) {{ {Many(10_000, i => $"case {i}: PORTB |= {1 << (i % 4)};")} }} for (;;) sleep(); }}"
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "0000????");
    }

    [Fact]
    public void A_very_long_endless_loop_knows_what_it_sets_and_forgets_what_it_counts()
    {
        // Ten thousand objects that count as the loop goes round, one of them up to four; the last sleep is seen on every pass.
        var run = GeneratedFirmware.Run(
            $"static unsigned char n[10000], few; {FirstSleep} PORTC = 0x2A; for (;;) {{ {Many(10_000, i => $"n[{i}]++;")} if (few < 4) few++; PORTB = n[9] & 0x3F; DDRB = few ? 0x0F : 0xFF; sleep(); }} }}"
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "00??????");
        run.Expect(1, "DDRB", "00001111");
        run.Expect(1, "PORTC", "00101010");
    }

    [Theory]
    [InlineData(100)]
    [InlineData(2_000)]
    public void Deep_blocks_end_in_their_one_state(int depth)
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} {Repeat("{", depth)} PORTB = 0x55; {Repeat("}", depth)} for (;;) sleep(); }}"
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "01010101");
    }

    [Theory]
    [InlineData(100)]
    [InlineData(1_500)]
    public void Deep_undecided_conditions_join_on_the_way_out(int depth)
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} {Many(depth, i => $"if (TCNT1 != {i}) {{")} PORTB = 0x55; {Repeat("}", depth)} for (;;) sleep(); }}"
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "0?0?0?0?");
        run.Expect(1, "DDRC", "00010101");
    }

    [Fact]
    public void A_hundred_loops_in_each_other_with_unknown_ends_reach_a_fixpoint()
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} {Many(100, i => $"while (PIND != {i}) {{")} PORTB = 1; {Repeat("}", 100)} for (;;) sleep(); }}"
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "0000000?");
    }

    [Fact]
    public void A_hundred_counting_loops_in_each_other_stop_at_the_budget()
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} {Many(100, i => $"for (unsigned char i{i} = 0; i{i} < 2; i{i}++) {{")} PORTB ^= 1; {Repeat("}", 100)} for (;;) sleep(); }}"
        );
        run.ExpectLimits("step-budget");
        Assert.True(run.Result!.Limits.Single().IsIncomplete);
        run.Expect(0, "DDRC", "00010101");
    }

    [Fact]
    public void A_hundred_switches_in_each_other_are_followed()
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} {Many(100, i => $"switch (PIND) {{ case {i}: case 200:")} PORTB = 1; {Repeat("}", 100)} for (;;) sleep(); }}"
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "0000000?");
    }

    [Fact]
    public void Two_thousand_parentheses_are_looked_through()
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} PORTB = {Repeat("(", 2_000)}0x2A{Repeat(")", 2_000)}; for (;;) sleep(); }}"
        );
        Assert.Empty(run.Read.Errors);
        run.ExpectLimits();
        run.Expect(1, "PORTB", "00101010");
    }

    [Fact]
    public void More_brackets_than_the_parser_takes_are_an_error_in_the_source()
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} PORTB = {Repeat("(", 3_000)}0x2A{Repeat(")", 3_000)}; for (;;) sleep(); }}"
        );
        Assert.Contains(run.Read.Errors, error => error.Message.Contains("nesting", StringComparison.Ordinal));
    }

    [Fact]
    public void A_sum_of_four_thousand_terms_is_computed()
    {
        var run = GeneratedFirmware.Run(
            $"unsigned char one = 1; {FirstSleep} PORTB = {string.Join('+', Enumerable.Repeat("one", 4_000))}; for (;;) sleep(); }}"
        );
        run.ExpectLimits();

        // 4000 modulo 256.
        run.Expect(1, "PORTB", "10100000");
    }

    [Fact]
    public void A_chain_of_three_thousand_else_ifs_joins_them_all()
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} {Many(3_000, i => $"if (TCNT1 == {i}) PORTB = {i % 16}; else")} PORTB = 1; for (;;) sleep(); }}"
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "0000????");
    }

    [Fact]
    public void A_megabyte_of_initialisers_is_read_back_exactly()
    {
        // Ten tables: an object of more than 32,767 bytes is one that the target cannot address.
        var run = GeneratedFirmware.Run(
            Many(10, t => $"static const unsigned char t{t}[] = {{ {Many(30_000, i => $"{(i + t) & 0xFF},")} }};")
                + $"{FirstSleep} PORTB = t4[0x1234]; PORTC = t9[29999]; for (;;) sleep(); }}"
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "00111000");
        run.Expect(1, "PORTC", "00111000");
    }

    [Fact]
    public void An_array_beyond_the_targets_addresses_is_an_error_in_the_source()
    {
        var run = GeneratedFirmware.Run(
            $"static const unsigned char t[] = {{ {Many(33_000, i => $"{i & 0xFF},")} }}; {FirstSleep} PORTB = t[3]; for (;;) sleep(); }}"
        );
        Assert.NotEmpty(run.Read.Errors);
        Assert.Null(run.Result);
    }

    [Fact]
    public void Twenty_thousand_table_rows_that_point_at_registers_are_followed()
    {
        var run = GeneratedFirmware.Run(
            "struct row { volatile unsigned char *port; unsigned char mask; };"
                + $"static const struct row rows[] = {{ {Many(10_000, i => $"{{ &PORTB, {i & 0xFF} }},")} }};"
                + $"{FirstSleep} *rows[7777].port = rows[7777].mask; for (;;) sleep(); }}"
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "01100001");
    }

    [Fact]
    public void A_loop_with_an_unknown_end_forgets_what_it_writes_and_nothing_else()
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} unsigned n = TCNT1; PORTC = 0x40; for (unsigned i = 0; i < n; i++) {{ PORTB = i; PORTC |= 1; }} for (;;) sleep(); }}"
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "????????");
        run.Expect(1, "PORTC", "0100000?");
        run.Expect(1, "DDRC", "00010101");
    }

    [Fact]
    public void A_pointer_that_walks_through_the_registers_without_end_lowers_certainty()
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} volatile unsigned char *p = (volatile unsigned char *)0x27; unsigned n = TCNT1; while (n--) *p++ = 0; for (;;) sleep(); }}"
        );
        Assert.Contains(run.Result!.Limits, limit => limit.Id is "unknown-address");
        Assert.NotEmpty(run.Result.RestingPoints[1].State.UnknownCallees);
        run.Expect(1, "DDRB", "00000000");
    }

    [Fact]
    public void Computed_jumps_over_a_table_reach_all_that_it_holds()
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} static const void *const t[] = {{ &&a, &&b, &&c }}; goto *t[PIND % 3];"
                + "a: PORTB |= 1; goto *t[PIND % 3]; b: PORTB |= 2; goto *t[PIND % 3]; c: PORTB |= 4; if (PIND) goto *t[PIND % 3]; for (;;) sleep(); }"
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "000001??");
    }

    [Fact]
    public void A_computed_jump_to_nowhere_known_is_told()
    {
        var run = GeneratedFirmware.Run(
            $"extern void *where(void); {FirstSleep} void *p = &&a; p = where(); goto *p; a: PORTB = 1; for (;;) sleep(); }}"
        );
        Assert.Contains(run.Result!.Limits, limit => limit is { Id: "unknown-jump", IsIncomplete: true });
        run.Expect(0, "DDRC", "00010101");
    }

    [Fact]
    public void Functions_that_call_each_other_without_end_are_cut()
    {
        var run = GeneratedFirmware.Run(
            $"void b(void); void a(void) {{ PORTB |= 2; b(); }} void b(void) {{ a(); }} {FirstSleep} a(); for (;;) sleep(); }}"
        );
        run.ExpectLimits("recursion");
        run.Expect(1, "PORTB", "00000010");
        Assert.NotEmpty(run.Result!.RestingPoints[1].State.UnknownCallees);
    }

    [Fact]
    public void Functions_that_call_each_other_in_every_way_are_cut()
    {
        var run = GeneratedFirmware.Run(
            "void b(unsigned n); void c(unsigned n); void a(unsigned n) { if (PIND) b(n + 1); PORTC |= 1; c(n); }"
                + "void b(unsigned n) { a(n); if (PIND) c(n); PORTC |= 2; } void c(unsigned n) { if (PIND) a(n); else if (PIND) b(n); }"
                + $"{FirstSleep} a(0); for (;;) sleep(); }}"
        );
        run.ExpectLimits("recursion");
        run.Expect(1, "PORTC", "000000?1");
    }

    [Fact]
    public void A_recursion_that_grows_faster_than_any_budget_is_cut()
    {
        var run = GeneratedFirmware.Run(
            "static unsigned ackermann(unsigned m, unsigned n) { return m == 0 ? n + 1 : n == 0 ? ackermann(m - 1, 1) : ackermann(m - 1, ackermann(m, n - 1)); }"
                + $"{FirstSleep} PORTB = ackermann(3, 7); for (;;) sleep(); }}"
        );
        run.ExpectLimits("recursion");
        run.Expect(1, "PORTB", "????????");
    }

    [Theory]
    [InlineData(150, false)]
    [InlineData(3_000, true)]
    public void Long_chains_of_calls_are_followed_as_far_as_the_limit(int length, bool isCut)
    {
        var run = GeneratedFirmware.Run(
            $"{Many(length + 1, i => $"void f{i}(void);")} {Many(length, i => $"void f{i}(void) {{ f{i + 1}(); }}")}"
                + $"void f{length}(void) {{ PORTB = 0x55; }} {FirstSleep} f0(); for (;;) sleep(); }}"
        );
        run.ExpectLimits(isCut ? ["call-depth"] : []);
        run.Expect(1, "PORTB", isCut ? "00000000" : "01010101");
        Assert.Equal(isCut, run.Result!.RestingPoints[1].State.UnknownCallees.Length > 0);
    }

    [Fact]
    public void A_tree_of_calls_that_doubles_at_each_level_is_run_once_a_level_where_the_calls_repeat()
    {
        var run = GeneratedFirmware.Run(
            $"static void f0(void) {{ PORTB ^= 1; }} {Many(40, i => $"static void f{i + 1}(void) {{ f{i}(); f{i}(); }}")} {FirstSleep} f40(); f0(); for (;;) sleep(); }}"
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "00000001");
    }

    [Fact]
    public void A_tree_of_calls_that_doubles_at_each_level_stops_at_the_budget_where_no_two_calls_are_alike()
    {
        var run = GeneratedFirmware.Run(
            $"unsigned long long n; static void f0(void) {{ n++; PORTB = n; }} {Many(40, i => $"static void f{i + 1}(void) {{ f{i}(); f{i}(); }}")} {FirstSleep} f40(); for (;;) sleep(); }}"
        );
        run.ExpectLimits("step-budget");
        run.Expect(0, "DDRC", "00010101");
    }

    [Fact]
    public void Macros_that_name_each_other_expand_once()
    {
        var run = GeneratedFirmware.Run(
            $"#define A B\n#define B A\n#define F(x) F(x)\nstatic unsigned char A = 9;\nstatic unsigned char F(unsigned char x) {{ return x + 1; }}\n{FirstSleep} PORTB = F(A); for (;;) sleep(); }}"
        );
        Assert.Empty(run.Read.Errors);
        run.ExpectLimits();
        run.Expect(1, "PORTB", "00001010");
    }

    [Fact]
    public void Macros_that_multiply_are_an_error_in_the_source()
    {
        var definitions = Many(8, i => $"#define E{i + 1} {string.Concat(Enumerable.Repeat($"E{i + 2} ", 8))}");
        ExpectTooManyTokens($"{definitions}\n#define E9 PORTB = 1;\n{FirstSleep} E1 for (;;) sleep(); }}");
    }

    [Fact]
    public void Macros_that_multiply_their_arguments_are_an_error_in_the_source()
    {
        var definitions = Many(5, i => $"#define F{i + 1}(x) F{i}(F{i}(x))");
        ExpectTooManyTokens($"#define F0(x) x x\n{definitions}\n{FirstSleep} F5(PORTB = 1;) for (;;) sleep(); }}");
    }

    private static void ExpectTooManyTokens(string source)
    {
        var run = GeneratedFirmware.Run(source);
        Assert.Contains("expand to more than", Assert.Single(run.Read.Errors).Message, StringComparison.Ordinal);
        Assert.Null(run.Result);
    }

    [Fact]
    public void A_file_that_includes_itself_is_an_error_in_the_source()
    {
        var run = GeneratedFirmware.Run("#include \"main.c\"\nint main(void) { for (;;) sleep(); }");
        Assert.Contains(run.Read.Errors, error => error.Message.Contains("too deeply", StringComparison.Ordinal));
    }

    [Fact]
    public void Jumps_from_anywhere_to_anywhere_reach_a_fixpoint()
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} {Many(200, i => $"l{i}: PORTB |= {1 << (i % 2)}; if (TCNT1 == {i}) goto l{i * 7919 % 200};")} for (;;) sleep(); }}",
            stepBudget: 5_000_000
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "00000011");
    }

    [Fact]
    public void A_machine_that_interprets_a_program_it_does_not_know_reaches_a_fixpoint()
    {
        var run = GeneratedFirmware.Run(
            $"{FirstSleep} unsigned char a = 0; for (;;) {{ switch (PIND) {{ case 0: a++; break; case 1: PORTB = a; break; case 2: PORTC = 1; break; case 3: goto out; }} }} out: for (;;) sleep(); }}"
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "????????");
        run.Expect(1, "PORTC", "0000000?");
        run.Expect(1, "DDRC", "00010101");
    }

    [Fact]
    public void Handlers_that_interrupt_each_other_reach_a_fixpoint()
    {
        var run = GeneratedFirmware.Run(
            "volatile unsigned char a, b, c;"
                + "void __vector_1(void) __attribute__((signal)); void __vector_1(void) { a++; PORTB = a; }"
                + "void __vector_2(void) __attribute__((signal)); void __vector_2(void) { b = a + 1; __asm__ __volatile__ (\"sei\"); PORTC |= b & 1; }"
                + "void __vector_13(void) __attribute__((signal)); void __vector_13(void) { c = b; __asm__ __volatile__ (\"sei\"); PORTD |= 1; for (unsigned char i = 0; i < c; i++) a += i; }"
                + $"{FirstSleep} *(volatile unsigned char *)0x3D = 3; *(volatile unsigned char *)0x6F = 1; __asm__ __volatile__ (\"sei\");"
                + "for (unsigned i = 0; i < 1000; i++) { a = i; if (b) DDRB |= 1; } for (;;) sleep(); }",
            stepBudget: 5_000_000
        );
        run.ExpectLimits();
        run.Expect(1, "PORTB", "????????");
        run.Expect(1, "PORTC", "0000000?");
        run.Expect(1, "PORTD", "0000000?");
    }

    private static string Many(int count, Func<int, FormattableString> item) =>
        string.Join('\n', Enumerable.Range(0, count).Select(i => item(i).ToString(CultureInfo.InvariantCulture)));

    private static string Repeat(string text, int count) => string.Concat(Enumerable.Repeat(text, count));
}
