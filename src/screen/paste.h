/* A text while it is pasted. It comes in parts, and may be handed over in parts. */
#ifndef SCREEN_PASTE_H
#define SCREEN_PASTE_H

#include "base/text.h"

#include <stdbool.h>
#include <stddef.h>

/* What the terminal sends before and after it, where it marks pastes. */
#define PASTE_BEGIN "\033[200~"
#define PASTE_END "\033[201~"

struct paste {
	struct text text;    /* what was handed over last, else what has come since */
	bool is_handed_over; /* all that came so far */
};

void paste_start(struct paste *paste);
/* What goes beyond a megabyte is let go: no field takes a thousandth of it. */
void paste_add(struct paste *paste, const unsigned char *bytes, size_t count);
/* Hands over what came. False where nothing came since it was done last. */
bool paste_hand_over(struct paste *paste);
/* How many bytes at the end may be but the beginning: of the end mark, or of a character. */
size_t paste_begun(const unsigned char *bytes, size_t count);

#endif
