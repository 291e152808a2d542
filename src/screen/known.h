/* What terminals send for keys, whatever their description says. */
#ifndef SCREEN_KNOWN_H
#define SCREEN_KNOWN_H

#include <stddef.h>

/* The key of editor/key.h that sends this control character; this sequence, whole. PRESS_NOTHING:
 * none is known. */
int known_control(unsigned char byte);
int known_sequence(const unsigned char *bytes, size_t length);

#endif
