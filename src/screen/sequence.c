#include "screen/sequence.h"

#include <string.h>

static bool is_parameter(unsigned char byte)
{
	return byte >= 0x20 && byte < 0x40;
}

static bool is_final(unsigned char byte)
{
	return byte >= 0x40 && byte < 0x7f;
}

/* Up to the first byte that is no parameter, it included where it is a final one. */
static size_t length_from(const unsigned char *bytes, size_t count, size_t at)
{
	bool is_private = at < count && bytes[at] >= '<' && bytes[at] <= '?';

	for (size_t first = at; at < count; at++) {
		/* Some terminals end keys held with Shift so; private answers have it within. */
		if (bytes[at] == '$' && at > first && !is_private)
			return at + 1;
		if (!is_parameter(bytes[at]))
			return is_final(bytes[at]) ? at + 1 : at;
	}
	return 0;
}

/* ESC [ M and three bytes, none of which is a control character. */
static size_t report_length(const unsigned char *bytes, size_t count)
{
	for (size_t at = 3; at < REPORT_BYTES; at++) {
		if (at == count)
			return 0;
		if (bytes[at] < ' ')
			return at;
	}
	return REPORT_BYTES;
}

static size_t bracket_length(const unsigned char *bytes, size_t count)
{
	if (count == 2)
		return 0;
	if (bytes[2] == 'M')
		return report_length(bytes, count);
	if (bytes[2] == '[') /* the Linux console's F1 to F5 have one more */
		return count == 3 ? 0 : is_final(bytes[3]) ? 4 : 3;
	return length_from(bytes, count, 2);
}

bool sequence_begins_string(const unsigned char *bytes, size_t count)
{
	return count >= 2 && strchr("]P_^X", bytes[1]) && bytes[1];
}

size_t sequence_length(const unsigned char *bytes, size_t count)
{
	if (count < 2)
		return 0;
	if (bytes[1] == '[')
		return bracket_length(bytes, count);
	if (bytes[1] == 'O')
		return length_from(bytes, count, 2);
	if (sequence_begins_string(bytes, count))
		return count == 2 ? 0 : bytes[2] >= ' ' ? 2 : 1;
	return bytes[1] == '\\' ? 2 : 1; /* a string's end without the string */
}

bool sequence_is_whole(const unsigned char *bytes, size_t length)
{
	unsigned char last = bytes[length - 1];

	if (length >= 3 && bytes[1] == '[' && bytes[2] == 'M')
		return length == REPORT_BYTES;
	return length >= 3 && (is_final(last) || last == '$') &&
		!(length == 3 && bytes[1] == '[' && last == '[');
}

int sequence_keypad(const unsigned char *bytes, size_t length)
{
	static const char keys[] = "*+,-./0123456789";

	if (length != 3 || bytes[1] != 'O' || bytes[2] < 'j' || bytes[2] > 'y')
		return 0;
	return keys[bytes[2] - 'j'];
}

bool sequence_is_key(const unsigned char *bytes, size_t length)
{
	unsigned char last = bytes[length - 1];

	if (!sequence_is_whole(bytes, length))
		return false;
	if (bytes[1] == 'O')
		return true;
	return bytes[2] == '[' || (bytes[2] < '<' && strchr("~^$@uABCDEFGHPQS", last));
}
