int main(void)
{
    for (;;)
        ;
}
