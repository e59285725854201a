// flags: -mmcu=atmega328p
// Operands in order, names resolved, escapes of the template undone.
unsigned char f(unsigned char *p, unsigned char v)
{
    unsigned char r;
    __asm__ __volatile__("sleep");
    __asm__ volatile("in %0, %1" "\n\t" "out %1, %0" : "=&r"(r) : "I"(0x3F) : "memory");
    __asm__("swap %[value]" : [value] "+r"(v));
    asm volatile("sts %1, %A0 ; 100%%" : : "r"(v), "n"(0x60) : "r24", "r25");
    asm("" ::: "memory");
    asm volatile("mov %0, %1" : "=r"(*p) : "r"(r), "0"(p[1]));
    return r + v;
}
// expect: function f(p : p16, v : u8) : u8
// expect:   local r : u8
// expect:   asm "sleep"
// expect:   asm "in %0, %1\n\tout %1, %0" out =&r u8 @ &r in I 63:i16 clobbers memory
// expect:   asm "swap %0" out +r u8 @ &v
// expect:   asm "sts %1, %A0 ; 100%%" in r u8[&v] in n 96:i16 clobbers r24 r25
// expect:   asm "" clobbers memory
// expect:   asm "mov %0, %1" out =r u8 @ p16[&p] in r u8[&r] in 0 u8[(p16[&p] + 1)]
// expect:   return u8((i16(u8[&r]) + i16(u8[&v])))
