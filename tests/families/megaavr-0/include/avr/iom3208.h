/* What the worked firmware needs of a part with 32 pins: instances and vectors under the names of the vendor's header. */
#include "../ten-bit-converter.h"

#define PORTMUX_USARTROUTEA _SFR_MEM8(0x05E2)
#define TCB0 (*(TCB_t *)0x0A80)
#define TCB1 (*(TCB_t *)0x0A90)

#define RTC_CNT_vect _VECTOR(3)
#define RTC_PIT_vect _VECTOR(4)
#define PORTA_PORT_vect _VECTOR(6)
#define TCA0_OVF_vect _VECTOR(7)
#define TCB0_INT_vect _VECTOR(12)
#define USART0_RXC_vect _VECTOR(17)
#define USART0_DRE_vect _VECTOR(18)
#define USART0_TXC_vect _VECTOR(19)
#define PORTD_PORT_vect _VECTOR(20)
#define ADC0_RESRDY_vect _VECTOR(22)
#define PORTC_PORT_vect _VECTOR(24)
#define PORTF_PORT_vect _VECTOR(29)
#define _VECTORS_SIZE 148
