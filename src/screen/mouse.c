#include "screen/mouse.h"

#include <stdlib.h>
#include <string.h>

/* Of a report's button: which one in the lowest bits, 3 for none; keys held with it do not
 * matter. */
enum { WHICH = 3, HELD_KEYS = 4 + 8 + 16, MOVING = 32, WHEEL = 64, FIRST = 0, NO_BUTTON = 3,
	ADDED = 32, NUMBER_MOST = 9999 };

static bool kind_of(int button, bool is_release, enum point_kind *kind)
{
	button &= ~HELD_KEYS;
	if (is_release && button != FIRST && button != MOVING + FIRST && button != NO_BUTTON)
		return false;
	if (button == WHEEL || button == WHEEL + 1)
		*kind = button == WHEEL ? POINT_WHEEL_UP : POINT_WHEEL_DOWN;
	else if (is_release || button == NO_BUTTON)
		*kind = POINT_RELEASE;
	else if (button == MOVING + FIRST)
		*kind = POINT_DRAG;
	else
		*kind = POINT_PRESS;
	return button == FIRST || button == MOVING + FIRST || *kind != POINT_PRESS;
}

/* A number without sign, up to one of the characters in `ends`; *text is then after it. */
static bool number_read(const char **text, const char *ends, int *value, char *end)
{
	char *rest;
	long number;

	if (**text < '0' || **text > '9')
		return false;
	number = strtol(*text, &rest, 10); /* too large a number is cut to one that is too large */
	if (number > NUMBER_MOST || !*rest || !strchr(ends, *rest))
		return false;
	*value = (int)number;
	*end = *rest;
	*text = rest + 1;
	return true;
}

bool mouse_read_text(const char *text, struct point *point)
{
	int button, column, row;
	char end;

	if (!number_read(&text, ";", &button, &end) || !number_read(&text, ";", &column, &end) ||
	    !number_read(&text, "Mm", &row, &end) || *text || column < 1 || row < 1)
		return false;
	point->column = column - 1;
	point->row = row - 1;
	return kind_of(button, end == 'm', &point->kind);
}

bool mouse_read_bytes(const unsigned char bytes[MOUSE_BYTES], struct point *point)
{
	if (bytes[0] < ADDED || bytes[1] <= ADDED || bytes[2] <= ADDED)
		return false;
	point->column = bytes[1] - ADDED - 1;
	point->row = bytes[2] - ADDED - 1;
	return kind_of(bytes[0] - ADDED, false, &point->kind);
}
