/* The twelve-bit converter with an amplifier in front, under the names of the vendor's headers. */
#ifndef TWELVE_BIT_CONVERTER_H
#define TWELVE_BIT_CONVERTER_H

typedef struct ADC_struct {
    register8_t CTRLA, CTRLB, CTRLC, CTRLD, INTCTRL, INTFLAGS, STATUS, DBGCTRL, CTRLE, CTRLF, COMMAND, PGACTRL, MUXPOS, MUXNEG;
    register8_t reserved_1[2];
    volatile uint32_t RESULT;
    register16_t SAMPLE;
} ADC_t;

#define ADC0 (*(ADC_t *)0x0600)
#define ADC_ENABLE_bm 0x01
#define ADC_LOWLAT_bm 0x20
#define ADC_RUNSTDBY_bm 0x80
#define ADC_RESRDY_bm 0x01
#define ADC_START_IMMEDIATE_gc 0x01
#define ADC_MODE_SINGLE_12BIT_gc (0x01 << 4)
#define ADC_MUXPOS_AIN4_gc 0x04
#define ADC_MUXPOS_AIN6_gc 0x06

#endif
