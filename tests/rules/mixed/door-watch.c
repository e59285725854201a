// device: attiny85
// rules: all
// A door watch: a reed contact, a blinking light, a timer that sleep stops. Every finding was judged by hand.
#include <avr/io.h>
#include <avr/interrupt.h>
#include <avr/sleep.h>
#define F_CPU 1000000UL
#include <util/delay.h>

#define RELAY PB0
#define REED  PB2
#define LED   PB1

volatile unsigned char opened;

ISR(PCINT0_vect) { opened = !(PINB & (1 << REED)); }

ISR(TIM0_COMPA_vect) { PORTB ^= 1 << LED; }

static void blink(unsigned char n)
{
    while (n--) {
        PORTB |= 1 << LED;
        _delay_ms(50); // finding: busy-wait-delay blink() proven warning
        PORTB &= ~(1 << LED);
        _delay_ms(50); // finding: busy-wait-delay blink() proven warning
    }
}

void setup(void)
{
    DDRB = (1 << RELAY) | (1 << LED);
    PORTB = 1 << REED; // finding: floating-pin PB3 PB4 proven note
    PCMSK |= 1 << PCINT2;
    GIMSK |= 1 << PCIE;
    TCCR0A = 1 << WGM01;
    OCR0A = 243;
    TCCR0B = (1 << CS02) | (1 << CS00); // finding: asleep-in-mode TIMER0 proven warning
    TIMSK |= 1 << OCIE0A;
    sei();
}

void loop(void)
{
    if (opened) {
        blink(3);
        opened = 0;
    }
    MCUCR = (MCUCR & ~((1 << SM1) | (1 << SM0))) | (1 << SM1);
    MCUCR |= 1 << SE;
    asm volatile ("sleep");
    MCUCR &= ~(1 << SE);
}

int main(void)
{
    setup(); // finding: peripheral-clock-left-on ADC TIMER1 USI proven note
    for (;;) loop();
}
