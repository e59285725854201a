// device: atmega1284p
// rules: all
// A bus logger: serial ring buffer, watch crystal, ports parked from a table. Every finding was judged by hand.
#include <avr/io.h>
#include <avr/interrupt.h>
#include <avr/sleep.h>
#include <avr/eeprom.h>
#include <util/twi.h>
#define F_CPU 8000000UL
#include <util/delay.h>
#include <string.h>

static uint8_t ring[16]; static volatile uint8_t head, tail;
static volatile uint32_t seconds;

ISR(TIMER2_OVF_vect) { seconds++; }
ISR(USART0_RX_vect) { ring[head++ & 15] = UDR0; }
ISR(USART0_UDRE_vect) { if (tail == head) UCSR0B &= ~_BV(UDRIE0); else UDR0 = ring[tail++ & 15]; }

static uint8_t twi_start(uint8_t a)
{
    TWCR = _BV(TWINT) | _BV(TWSTA) | _BV(TWEN);
    while (!(TWCR & _BV(TWINT))); // finding: polling-wait TWCR proven warning
    TWDR = a;
    TWCR = _BV(TWINT) | _BV(TWEN);
    while (!(TWCR & _BV(TWINT))); // finding: polling-wait TWCR proven warning
    return TW_STATUS;
}
static void twi_stop(void) { TWCR = _BV(TWINT) | _BV(TWSTO) | _BV(TWEN); while (TWCR & _BV(TWSTO)); }

static void rtc_init(void)
{
    ASSR = _BV(AS2);
    TCCR2B = _BV(CS22) | _BV(CS20); // finding: woken-too-often TIMER2 proven warning
    TCNT2 = 0;
    while (ASSR & (_BV(TCN2UB) | _BV(TCR2BUB)));
    TIFR2 = 0xff;
    TIMSK2 = _BV(TOIE2);
}
static void ports_init(void)
{
    volatile uint8_t *const p[4][2] = { { &DDRA, &PORTA }, { &DDRB, &PORTB }, { &DDRC, &PORTC }, { &DDRD, &PORTD } };
    const uint8_t dirs[4] = { 0x00, 0xb0, 0x00, 0x02 }, pulls[4] = { 0xfe, 0x0f, 0xff, 0xfd };
    for (int i = 0; i < 4; i++) { *p[i][0] = dirs[i]; *p[i][1] = pulls[i]; }
}
int main(void)
{
    ports_init(); // finding: peripheral-clock-left-on TIMER0 TIMER1 USART1 proven note
    // finding@-1: peripheral-clock-left-on TIMER3 proven note
    DIDR0 = 1;
    rtc_init();
    UBRR0L = 51; UCSR0B = _BV(RXEN0) | _BV(TXEN0) | _BV(RXCIE0); // finding: asleep-in-mode USART0 proven warning
    SPCR = _BV(SPE) | _BV(MSTR);
    ADCSRA = _BV(ADEN) | _BV(ADPS2); // finding: peripheral-on-in-sleep ADC proven warning
    ACSR |= _BV(ACD);
    set_sleep_mode(SLEEP_MODE_PWR_SAVE);
    sei();
    uint32_t last = 0;
    for (;;) {
        if (seconds - last >= 60) {
            last = seconds;
            twi_start(0x90); twi_stop();
            ADMUX = _BV(REFS0); ADCSRA |= _BV(ADSC); while (!(ADCSRA & _BV(ADIF))); ADCSRA |= _BV(ADIF); // finding: polling-wait ADCSRA proven warning
            SPDR = ADCH; while (!(SPSR & _BV(SPIF))); // finding: polling-wait SPSR proven warning
            eeprom_update_byte((uint8_t *)10, ADCL);
            UCSR0B |= _BV(UDRIE0);
        }
        OCR2A = 0; while (ASSR & _BV(OCR2AUB));
        sleep_mode();
    }
}
