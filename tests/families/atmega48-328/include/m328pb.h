/* A small register header of the ATmega328PB, which the usual compiler does not know yet: only what the firmware here uses, with the
   names that firmware is written in. */
#ifndef M328PB_H
#define M328PB_H
#include <stdint.h>

#define REGISTER(address) (*(volatile uint8_t *)(address))

#define DDRB REGISTER(0x24)
#define PORTB REGISTER(0x25)
#define DDRC REGISTER(0x27)
#define PORTC REGISTER(0x28)
#define DDRD REGISTER(0x2A)
#define PORTD REGISTER(0x2B)
#define PINE REGISTER(0x2C)
#define DDRE REGISTER(0x2D)
#define PORTE REGISTER(0x2E)
#define ACSR REGISTER(0x50)
#define SMCR REGISTER(0x53)
#define MCUCR REGISTER(0x55)
#define WDTCSR REGISTER(0x60)
#define XFDCSR REGISTER(0x62)
#define PRR0 REGISTER(0x64)
#define PRR1 REGISTER(0x65)
#define PCICR REGISTER(0x68)
#define TIMSK3 REGISTER(0x71)
#define PCMSK3 REGISTER(0x73)
#define ADCSRA REGISTER(0x7A)
#define TCCR3A REGISTER(0x90)
#define TCCR3B REGISTER(0x91)
#define OCR3AH REGISTER(0x99)
#define OCR3AL REGISTER(0x98)
#define SPCR1 REGISTER(0xAC)
#define UCSR1A REGISTER(0xC8)
#define UCSR1B REGISTER(0xC9)
#define UCSR1D REGISTER(0xCB)
#define UBRR1L REGISTER(0xCC)
#define UDR1 REGISTER(0xCE)
#define TWCR1 REGISTER(0xDC)

#define ACD 7
#define SE 0
#define SM1 2
#define PRADC 0
#define PRUSART0 1
#define PRSPI0 2
#define PRTIM1 3
#define PRUSART1 4
#define PRTIM0 5
#define PRTIM2 6
#define PRTWI0 7
#define PRTIM3 0
#define PRSPI1 2
#define PRTIM4 3
#define PRPTC 4
#define PRTWI1 5
#define PCIE3 3
#define PCINT24 0
#define OCIE3A 1
#define WGM32 3
#define CS32 2
#define CS30 0
#define UDRIE1 5
#define TXCIE1 6
#define RXEN1 4
#define TXEN1 3
#define RXSIE 7
#define SFDE 5
#define WDCE 4
#define WDE 3
#define WDIE 6
#define WDP0 0
#define WDP3 5

#define WDT_vect __vector_6
#define PCINT3_vect __vector_27
#define USART1_UDRE_vect __vector_29
#define USART1_TX_vect __vector_30
#define USART1_START_vect __vector_31
#define TIMER3_COMPA_vect __vector_33

#define ISR(vector) \
    void vector(void) __attribute__((signal, used, externally_visible)); \
    void vector(void)
#define sei() __asm__ volatile("sei" ::: "memory")
#define cli() __asm__ volatile("cli" ::: "memory")
#define sleep_cpu() __asm__ volatile("sleep" ::: "memory")
#endif
