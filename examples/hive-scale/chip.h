/*
 * The registers of the 8-bit part that this product uses, by the names that C code for it uses everywhere, so that the example
 * builds with nothing else at hand. Addresses are those of the data space.
 */
#ifndef CHIP_H
#define CHIP_H

#include <stdint.h>

#define REGISTER8(address) (*(volatile uint8_t *)(address))
#define REGISTER16(address) (*(volatile uint16_t *)(address))

/* Ports */
#define PINB REGISTER8(0x23)
#define DDRB REGISTER8(0x24)
#define PORTB REGISTER8(0x25)
#define PINC REGISTER8(0x26)
#define DDRC REGISTER8(0x27)
#define PORTC REGISTER8(0x28)
#define PIND REGISTER8(0x29)
#define DDRD REGISTER8(0x2A)
#define PORTD REGISTER8(0x2B)

/* Pin changes */
#define PCIFR REGISTER8(0x3B)
#define PCICR REGISTER8(0x68)
#define PCMSK2 REGISTER8(0x6D)
#define PCIF2 2
#define PCIE2 2
#define PCINT18 2
#define PCINT20 4

/* Analog comparator and converter */
#define ACSR REGISTER8(0x50)
#define ACD 7
#define ADC REGISTER16(0x78)
#define ADCSRA REGISTER8(0x7A)
#define ADMUX REGISTER8(0x7C)
#define DIDR0 REGISTER8(0x7E)
#define ADEN 7
#define ADSC 6
#define ADIF 4
#define ADIE 3
#define ADPS1 1
#define ADPS0 0
#define REFS0 6
#define ADC0D 0
#define ADC1D 1

/* Sleep, clock and power */
#define SMCR REGISTER8(0x53)
#define SE 0
#define SM0 1
#define SM1 2
#define MCUSR REGISTER8(0x54)
#define WDRF 3
#define MCUCR REGISTER8(0x55)
#define BODS 6
#define BODSE 5
#define WDTCSR REGISTER8(0x60)
#define WDIE 6
#define WDP3 5
#define WDCE 4
#define WDE 3
#define WDP0 0
#define CLKPR REGISTER8(0x61)
#define CLKPCE 7
#define CLKPS2 2
#define PRR REGISTER8(0x64)
#define PRTWI 7
#define PRTIM2 6
#define PRTIM0 5
#define PRTIM1 3
#define PRSPI 2
#define PRUSART0 1
#define PRADC 0

/* Serial port */
#define UCSR0A REGISTER8(0xC0)
#define UCSR0B REGISTER8(0xC1)
#define UCSR0C REGISTER8(0xC2)
#define UBRR0 REGISTER16(0xC4)
#define UDR0 REGISTER8(0xC6)
#define RXC0 7
#define TXC0 6
#define UDRE0 5
#define U2X0 1
#define RXCIE0 7
#define TXCIE0 6
#define UDRIE0 5
#define RXEN0 4
#define TXEN0 3
#define UCSZ01 2
#define UCSZ00 1

/* Interrupts: a handler is a function that the compiler knows by its vector's link name. */
#define PCINT2_vect __vector_5
#define WDT_vect __vector_6
#define USART_RX_vect __vector_18
#define USART_UDRE_vect __vector_19
#define USART_TX_vect __vector_20
#define ADC_vect __vector_21
#define ISR(vector)                                                                                                    \
    void vector(void) __attribute__((signal, used));                                                                   \
    void vector(void)

#define interrupts_on() __asm__ __volatile__("sei" ::: "memory")
#define interrupts_off() __asm__ __volatile__("cli" ::: "memory")
#define sleep_now() __asm__ __volatile__("sleep" ::: "memory")
#define watchdog_restart() __asm__ __volatile__("wdr")

/* Burns CPU cycles for a time that is known when compiling. */
#define delay_milliseconds(time) __builtin_avr_delay_cycles((uint32_t)(time) * (F_CPU / 1000UL))

#endif
