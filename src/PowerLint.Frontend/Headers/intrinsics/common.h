/* Read before every source file: what the parser lacks of the cross compilers' own vocabulary. */
#pragma GCC system_header
