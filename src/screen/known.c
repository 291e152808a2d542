#include "screen/known.h"
#include "editor/key.h"

#include <string.h>

static const struct {
	const char *bytes;
	int press;
} sequences[] = {
	/* In both modes of the keypad: after a stop it may be in the other. */
	{ "\033[A", PRESS_UP }, { "\033[B", PRESS_DOWN },
	{ "\033[C", PRESS_RIGHT }, { "\033[D", PRESS_LEFT },
	{ "\033OA", PRESS_UP }, { "\033OB", PRESS_DOWN },
	{ "\033OC", PRESS_RIGHT }, { "\033OD", PRESS_LEFT },
	{ "\033[H", PRESS_HOME }, { "\033[F", PRESS_END },
	{ "\033OH", PRESS_HOME }, { "\033OF", PRESS_END },
	{ "\033[1~", PRESS_HOME }, { "\033[4~", PRESS_END }, { "\033[3~", PRESS_DELETE },
	{ "\033[5~", PRESS_PAGE_UP }, { "\033[6~", PRESS_PAGE_DOWN }, { "\033[Z", PRESS_BACK_TAB },
	{ "\033[1;2A", PRESS_VIEW_UP }, { "\033[1;2B", PRESS_VIEW_DOWN },
	{ "\033[1;2C", PRESS_VIEW_RIGHT }, { "\033[1;2D", PRESS_VIEW_LEFT },
	{ "\033[a", PRESS_VIEW_UP }, { "\033[b", PRESS_VIEW_DOWN },
	{ "\033[c", PRESS_VIEW_RIGHT }, { "\033[d", PRESS_VIEW_LEFT },
	{ "\033[1;5A", PRESS_ON_UP }, { "\033[1;5B", PRESS_ON_DOWN },
	{ "\033[1;5C", PRESS_ON_RIGHT }, { "\033[1;5D", PRESS_ON_LEFT },
	{ "\033Oa", PRESS_ON_UP }, { "\033Ob", PRESS_ON_DOWN },
	{ "\033Oc", PRESS_ON_RIGHT }, { "\033Od", PRESS_ON_LEFT },
	{ "\033OM", PRESS_ENTER },
	{ "\033OP", PRESS_F1 }, { "\033OQ", PRESS_F2 }, { "\033OR", PRESS_F3 },
	{ "\033OS", PRESS_F4 },
	{ "\033[11~", PRESS_F1 }, { "\033[12~", PRESS_F2 }, { "\033[13~", PRESS_F3 },
	{ "\033[14~", PRESS_F4 }, { "\033[15~", PRESS_F5 }, { "\033[17~", PRESS_F6 },
	{ "\033[18~", PRESS_F7 }, { "\033[19~", PRESS_F8 }, { "\033[20~", PRESS_F9 },
	/* The Linux console's. */
	{ "\033[[A", PRESS_F1 }, { "\033[[B", PRESS_F2 }, { "\033[[C", PRESS_F3 },
	{ "\033[[D", PRESS_F4 }, { "\033[[E", PRESS_F5 },
};

static const struct {
	char byte;
	int press;
} controls[] = {
	{ '\r', PRESS_ENTER }, { '\n', PRESS_ENTER }, { '\t', PRESS_TAB },
	{ 0x7f, PRESS_BACKSPACE }, { '\b', PRESS_BACKSPACE }, { 'C' & 0x1f, PRESS_ESCAPE },
	{ 'A' & 0x1f, PRESS_LINE_START }, { 'E' & 0x1f, PRESS_LINE_END },
	{ 'U' & 0x1f, PRESS_ERASE_LINE }, { 'W' & 0x1f, PRESS_ERASE_WORD },
	{ 'K' & 0x1f, PRESS_ERASE_REST },
	{ 'Z' & 0x1f, PRESS_PAUSE }, { 'L' & 0x1f, PRESS_REPAINT },
};

int known_control(unsigned char byte)
{
	for (size_t i = 0; i < sizeof controls / sizeof *controls; i++)
		if ((unsigned char)controls[i].byte == byte)
			return controls[i].press;
	return PRESS_NOTHING;
}

int known_sequence(const unsigned char *bytes, size_t length)
{
	for (size_t i = 0; i < sizeof sequences / sizeof *sequences; i++)
		if (strlen(sequences[i].bytes) == length &&
		    memcmp(bytes, sequences[i].bytes, length) == 0)
			return sequences[i].press;
	return PRESS_NOTHING;
}
