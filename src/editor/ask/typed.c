#include "editor/ask/typed.h"

#include <string.h>
#include <strings.h>

size_t typed_digits(const char *at)
{
	return strspn(at, "0123456789");
}

size_t typed_letters(const char *at)
{
	size_t length = 0;

	while ((at[length] >= 'a' && at[length] <= 'z') || (at[length] >= 'A' && at[length] <= 'Z'))
		length++;
	return length;
}

const char *typed_unit(const char *word, size_t length)
{
	static const char *const names[][2] = {
		{ "ft", "ft" }, { "foot", "ft" }, { "feet", "ft" },
		{ "in", "in" }, { "inch", "in" }, { "inches", "in" },
		{ "m", "m" }, { "metre", "m" }, { "metres", "m" }, { "meter", "m" },
		{ "meters", "m" },
		{ "cm", "cm" }, { "centimetre", "cm" }, { "centimetres", "cm" },
		{ "centimeter", "cm" }, { "centimeters", "cm" },
		{ "mm", "mm" }, { "millimetre", "mm" }, { "millimetres", "mm" },
		{ "millimeter", "mm" }, { "millimeters", "mm" },
	};

	for (size_t i = 0; i < sizeof names / sizeof *names; i++)
		if (strlen(names[i][0]) == length && strncasecmp(names[i][0], word, length) == 0)
			return names[i][1];
	return NULL;
}

static bool is_point(char c)
{
	return c == '.' || c == ',';
}

struct typed_number typed_number(const char *at)
{
	struct typed_number n = { .whole = typed_digits(at) };

	if (is_point(at[n.whole]))
		n.after = typed_digits(at + n.whole + 1);
	n.length = n.whole + (n.after ? 1 + n.after : 0);
	n.is_doubtful = n.after == 3 && n.whole > 0 && at[0] != '0' && at[n.whole] == ',';
	while (n.after && is_point(at[n.length]) && typed_digits(at + n.length + 1)) {
		n.length += 1 + typed_digits(at + n.length + 1);
		n.is_doubtful = true;
	}
	return n;
}

bool typed_is_number(const char *typed)
{
	const char *at = typed + strspn(typed, " \t");
	struct typed_number n = typed_number(at);

	return n.length && at[n.length + strspn(at + n.length, " \t")] == '\0';
}
