// flags: -mmcu=atmega328p
// The form of avr-libc's atomic blocks: a variable whose end of scope restores a register.
#define SREG (*(volatile unsigned char *)0x5F)
static inline void restore(const unsigned char *s) { SREG = *s; }
static inline unsigned char disable(void) { __asm__ volatile("cli" ::: "memory"); return 1; }
int count;
void f(void)
{
    for (unsigned char saved __attribute__((cleanup(restore))) = SREG, todo = disable(); todo; todo = 0) {
        count++;
    }
}
// expect: global count : i16
// expect: function static restore(s : p16) : void
// expect:   u8![0x5f] = u8[p16[&s]]
// expect: function static disable() : u8
// expect:   asm "cli" clobbers memory
// expect:   return 1:u8
// expect: function f() : void
// expect:   block {
// expect:     local saved : u8 = u8![0x5f] cleanup restore
// expect:     local todo : u8 = call:u8 disable()
// expect:     loop while u8[&todo] step u8[&todo] = 0:u8 {
// expect:       i16[&count] += 1:i16 in i16 (old)
// expect:     }
// expect:   }
