// device: atxmega32a4u
// A transfer channel's two interrupts share a vector: entering the handler clears neither flag.
#include <avr/interrupt.h>
#include <avr/io.h>
#include <avr/sleep.h>

static volatile uint8_t blocks;

ISR(DMA_CH1_vect)
{
    blocks++;
}

int main(void)
{
    DMA.CTRL = DMA_ENABLE_bm;
    DMA.CH1.TRIGSRC = DMA_CH_TRIGSRC_USARTC0_RXC_gc;
    DMA.CH1.TRFCNT = 64;
    DMA.CH1.CTRLB = DMA_CH_TRNINTLVL_LO_gc;
    DMA.CH1.CTRLA = DMA_CH_ENABLE_bm | DMA_CH_REPEAT_bm | DMA_CH_SINGLE_bm;
    PMIC.CTRL = PMIC_LOLVLEN_bm;
    set_sleep_mode(SLEEP_SMODE_IDLE_gc);
    sei();
    for (;;) {
        sleep_mode(); // finding: pending-wake DMA.CH1.CTRLB.TRNIF proven error
    }
}
