// flags: -mmcu=atmega328p
// What the lowering does not express stays in the text as unknown, with a gap that says so.

int jumps(int x)
{
    __asm__ goto("rjmp %l0" : : : : out);
    x = 1;
out:
    return x;
}

float part(void)
{
    _Complex float z = 1.0f;
    z *= z;
    return __real__ z;
}
// expect: function jumps(x : i16) : i16
// expect:   unknown effect (assembly that jumps to labels)
// expect:   i16[&x] = 1:i16
// expect:   label out:
// expect:   return i16[&x]
// expect: function part() : f32
// expect:   local z : [8] = { +0: 1:f32 }
// expect:   unknown:[8](operator on vectors or complex numbers; &z; [8][&z])
// expect:   return unknown:f32(operator on complex numbers; [8][&z])
// expect: gap 6: assembly that jumps to labels
// expect: gap 15: operator on vectors or complex numbers
// expect: gap 16: operator on complex numbers
