/* What the worked firmware needs of the part: instances and vectors under the names of the vendor's header. */
#include "../../../megaavr-0/include/ten-bit-converter.h"

#define TCB0 (*(TCB_t *)0x0A40)

#define PORTA_PORT_vect _VECTOR(3)
#define PORTB_PORT_vect _VECTOR(4)
#define RTC_CNT_vect _VECTOR(6)
#define RTC_PIT_vect _VECTOR(7)
#define TCA0_OVF_vect _VECTOR(8)
#define TCB0_INT_vect _VECTOR(13)
#define ADC0_RESRDY_vect _VECTOR(17)
#define USART0_RXC_vect _VECTOR(22)
#define USART0_DRE_vect _VECTOR(23)
#define USART0_TXC_vect _VECTOR(24)
#define _VECTORS_SIZE 104
