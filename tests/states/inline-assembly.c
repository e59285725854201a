// device: atmega328p
// flags: -DF_CPU=8000000UL
// Registers written from inline assembly.
#include <avr/io.h>
#include <avr/sleep.h>

static inline void out(uint8_t value)
{
    __asm__ __volatile__("out %0, %1" : : "I"(_SFR_IO_ADDR(DDRB)), "r"(value));
}

int main(void)
{
    uint8_t seen;
    out(0x2A);
    __asm__ __volatile__("sbi %0, %1" : : "I"(_SFR_IO_ADDR(PORTB)), "I"(2));
    __asm__ __volatile__("cbi %0, 3" : : "I"(_SFR_IO_ADDR(DDRB)));
    __asm__ __volatile__("in %0, %1" : "=r"(seen) : "I"(_SFR_IO_ADDR(DDRB)));
    DDRD = seen;
    __asm__ __volatile__("sts %0, %1" : : "n"(_SFR_MEM_ADDR(PRR)), "r"((uint8_t)0x81));
    __asm__ __volatile__("nop");
    __asm__ __volatile__("wdr");
    SMCR = _BV(SM1) | _BV(SE);
    for (;;)
        __asm__ __volatile__("sleep" : : ); // state: DDRB = 0x22, PORTB = 0x04, DDRD = 0x22, PRR = 0x81
}
