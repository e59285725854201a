/* What the worked firmware needs of the part: blocks, instances and vectors under the names of the vendor's header. */
#include "../../../megaavr-0/include/per-pin-control.h"

#define SLPCTRL_SMODE_gm 0x0E
#define SLEEP_MODE_IDLE (0x00 << 1)
#define SLEEP_MODE_STANDBY (0x01 << 1)
#define SLEEP_MODE_PWR_DOWN (0x02 << 1)

typedef struct CLKCTRL_struct {
    register8_t MCLKCTRLA, MCLKCTRLB, MCLKCTRLC, MCLKINTCTRL, MCLKINTFLAGS, MCLKSTATUS, MCLKTIMEBASE, reserved_1;
    register8_t OSCHFCTRLA, OSCHFTUNE;
    register8_t reserved_2[14];
    register8_t OSC32KCTRLA;
    register8_t reserved_3[3];
    register8_t XOSC32KCTRLA;
} CLKCTRL_t;

#define CLKCTRL (*(CLKCTRL_t *)0x0060)
#define CLKCTRL_RUNSTDBY_bm 0x80
#define CLKCTRL_CLKOUT_bm 0x80

#include "../../../tinyavr-2/include/twelve-bit-converter.h"

#define TCB0 (*(TCB_t *)0x0B00)

#define RTC_CNT_vect _VECTOR(4)
#define RTC_PIT_vect _VECTOR(5)
#define PORTA_PORT_vect _VECTOR(7)
#define TCA0_OVF_vect _VECTOR(8)
#define TCB0_INT_vect _VECTOR(13)
#define USART0_RXC_vect _VECTOR(18)
#define PORTD_PORT_vect _VECTOR(21)
#define ADC0_RESRDY_vect _VECTOR(24)
#define PORTC_PORT_vect _VECTOR(27)
#define _VECTORS_SIZE 180
