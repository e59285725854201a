// flags: -mmcu=atmega328p
// needs: avr-gcc
#include <avr/interrupt.h>
#include <avr/io.h>
#define TICK(vector) ISR(vector)
ISR(WDT_vect, ISR_NOBLOCK) { PORTB |= 1; }
TICK(TIMER0_OVF_vect) { PORTB ^= 2; }
EMPTY_INTERRUPT(PCINT0_vect)
ISR_ALIAS(INT0_vect, WDT_vect);
#define TIMER(n) ISR(TIMER##n##_OVF_vect)
TIMER(1) { }
ISR(BADISR_vect) { }
void __vector_2(void) __attribute__((signal, used));
void __vector_2(void) { sei(); }
// expect: function __vector_6() : void handles WDT_vect #6 interruptible
// expect:   u8![0x25] |= 1:i16 in i16
// expect: function __vector_16() : void handles TIMER0_OVF_vect #16
// expect:   u8![0x25] ^= 2:i16 in i16
// expect: function naked __vector_3() : void handles PCINT0_vect #3
// expect:   asm "reti"
// expect: function naked __vector_1() : void handles INT0_vect #1
// expect:   call:void __vector_6()
// expect:   return
// expect: function __vector_13() : void handles __vector_13 #13
// expect: function __vector_default() : void handles BADISR_vect
// expect: function __vector_2() : void handles __vector_2 #2
// expect:   asm "sei" clobbers memory
