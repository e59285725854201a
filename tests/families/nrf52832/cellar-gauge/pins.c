#include "board.h"

static void output_low(uint32_t pin)
{
    NRF_P0->OUTCLR = 1u << pin;
    NRF_P0->PIN_CNF[pin] =
        (GPIO_PIN_CNF_DIR_Output << GPIO_PIN_CNF_DIR_Pos) | (GPIO_PIN_CNF_INPUT_Disconnect << GPIO_PIN_CNF_INPUT_Pos);
}

void pins_prepare(void)
{
    output_low(PIN_SENSOR_POWER);
    /* An idle line is high. */
    output_low(PIN_TXD);
    NRF_P0->OUTSET = 1u << PIN_TXD;
    /* The bus has pulls of its own on the sensor's board, where it is supplied; these hold it meanwhile. */
    NRF_P0->PIN_CNF[PIN_SCL] = GPIO_PIN_CNF_PULL_Pullup << GPIO_PIN_CNF_PULL_Pos;
    NRF_P0->PIN_CNF[PIN_SDA] = GPIO_PIN_CNF_PULL_Pullup << GPIO_PIN_CNF_PULL_Pos;
}
