#include "screen/control.h"

#include <stdbool.h>

static bool is_opened(const char *bytes, size_t length)
{
	return length >= 2 && bytes[0] == CONTROL_ESCAPE && bytes[1] == '[';
}

/* Where the final byte is to be. */
static size_t final_at(const char *bytes, size_t length)
{
	size_t at = 2;

	while (at < length && bytes[at] >= 0x20 && bytes[at] < 0x40)
		at++;
	return at;
}

size_t control_length(const char *bytes, size_t length)
{
	size_t at;

	if (!is_opened(bytes, length))
		return 1;
	at = final_at(bytes, length);
	return at < length ? at + 1 : length;
}

struct control control_read(const char *bytes, size_t length)
{
	static const struct control none = { .length = 0 };
	struct control control = { .count = 1 };
	size_t final;

	if (!is_opened(bytes, length))
		return none;
	final = final_at(bytes, length);
	if (final == length)
		return none;
	for (size_t i = 2; i < final; i++) {
		bool is_digit = bytes[i] >= '0' && bytes[i] <= '9';
		int *number = &control.numbers[control.count - 1];

		if ((!is_digit && bytes[i] != ';') || *number > 999 ||
		    control.count == CONTROL_NUMBERS)
			return none;
		if (is_digit)
			*number = 10 * *number + bytes[i] - '0';
		else
			control.count++;
	}
	control.final = bytes[final];
	control.length = final + 1;
	return control;
}

int control_number(const struct control *control, int index)
{
	return index < control->count && control->numbers[index] ? control->numbers[index] : 1;
}
