#include "base/utf8.h"

struct range {
	uint32_t first, last;
};

/* Unicode 15: general categories Cc, Cf, Zl, Zp, Co and the noncharacters of the first plane; the
 * last two codes of every plane are tested apart. */
static const struct range refused[] = {
	{ 0x0000, 0x001F }, { 0x007F, 0x009F }, { 0x00AD, 0x00AD }, { 0x0600, 0x0605 },
	{ 0x061C, 0x061C }, { 0x06DD, 0x06DD }, { 0x070F, 0x070F }, { 0x0890, 0x0891 },
	{ 0x08E2, 0x08E2 }, { 0x180E, 0x180E }, { 0x200B, 0x200F }, { 0x2028, 0x202E },
	{ 0x2060, 0x2064 }, { 0x2066, 0x206F }, { 0xE000, 0xF8FF }, { 0xFDD0, 0xFDEF },
	{ 0xFEFF, 0xFEFF }, { 0xFFF9, 0xFFFB }, { 0x110BD, 0x110BD }, { 0x110CD, 0x110CD },
	{ 0x13430, 0x1343F }, { 0x1BCA0, 0x1BCA3 }, { 0x1D173, 0x1D17A }, { 0xE0001, 0xE0001 },
	{ 0xE0020, 0xE007F }, { 0xF0000, 0x10FFFF },
};

static bool is_among(uint32_t code, const struct range *ranges, size_t count)
{
	for (size_t i = 0; i < count; i++)
		if (code >= ranges[i].first && code <= ranges[i].last)
			return true;
	return false;
}

static size_t sequence_length(unsigned char first)
{
	if (first < 0x80)
		return 1;
	if (first >= 0xC2 && first < 0xE0)
		return 2;
	if (first >= 0xE0 && first < 0xF0)
		return 3;
	if (first >= 0xF0 && first < 0xF5)
		return 4;
	return 0;
}

size_t utf8_decode(const char *text, size_t length, uint32_t *code)
{
	static const uint32_t least[] = { 0, 0, 0x80, 0x800, 0x10000 };
	static const unsigned char payload[] = { 0, 0x7F, 0x1F, 0x0F, 0x07 };
	const unsigned char *byte = (const unsigned char *)text;
	size_t count = sequence_length(byte[0]);
	uint32_t value;

	if (count == 0 || count > length)
		return 0;
	value = byte[0] & payload[count];
	for (size_t i = 1; i < count; i++) {
		if ((byte[i] & 0xC0) != 0x80)
			return 0;
		value = value << 6 | (byte[i] & 0x3F);
	}
	if (value < least[count] || value > 0x10FFFF || (value >= 0xD800 && value <= 0xDFFF))
		return 0;
	*code = value;
	return count;
}

size_t utf8_encode(uint32_t code, char *bytes)
{
	static const unsigned char leads[] = { 0, 0, 0xC0, 0xE0, 0xF0 };
	size_t length = code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;

	for (size_t i = length - 1; i > 0; i--) {
		bytes[i] = (char)(0x80 | (code & 0x3F));
		code >>= 6;
	}
	bytes[0] = (char)(leads[length] | code);
	return length;
}

bool utf8_is_text(uint32_t code)
{
	return (code & 0xFFFE) != 0xFFFE && !is_among(code, refused,
		sizeof refused / sizeof *refused);
}

bool utf8_is_joiner(uint32_t code)
{
	return code == 0x200C || code == 0x200D;
}

/* The character that ends before `at`; 0: there is none. */
static uint32_t character_before(const char *text, size_t at)
{
	size_t start = at;
	uint32_t code = 0;

	while (start && at - start < 4) {
		start--;
		if (((unsigned char)text[start] & 0xC0) != 0x80)
			break;
	}
	return start < at && utf8_decode(text + start, at - start, &code) ? code : 0;
}

bool utf8_fits_text(const char *text, size_t length, size_t at, size_t *step)
{
	uint32_t code = 0, after = 0;

	*step = utf8_decode(text + at, length - at, &code);
	if (!*step || !utf8_is_joiner(code))
		return *step && utf8_is_text(code);
	if (at + *step < length)
		utf8_decode(text + at + *step, length - at - *step, &after);
	return utf8_is_text(character_before(text, at)) && utf8_is_text(after);
}

size_t utf8_count(const char *text, size_t length)
{
	size_t count = 0;

	for (size_t i = 0; i < length; i++)
		count += ((unsigned char)text[i] & 0xC0) != 0x80;
	return count;
}

/* Combining marks of Latin, Greek and Cyrillic letters and of symbols, variation selectors,
 * joiners. Those of other scripts count as 1: never too few. */
static const struct range combining[] = {
	{ 0x0300, 0x036F }, { 0x1AB0, 0x1AFF }, { 0x1DC0, 0x1DFF }, { 0x200C, 0x200D },
	{ 0x20D0, 0x20F0 }, { 0xFE00, 0xFE0F }, { 0xFE20, 0xFE2F },
};

/* Unicode Standard Annex 11, East Asian wide and full-width, with the symbols between them that
 * some terminals draw wide. */
static const struct range wide[] = {
	{ 0x1100, 0x115F }, { 0x231A, 0x231B }, { 0x2329, 0x232A }, { 0x23E9, 0x23F3 },
	{ 0x25FD, 0x25FE }, { 0x2600, 0x27BF }, { 0x2B1B, 0x2B55 }, { 0x2E80, 0x303E },
	{ 0x3041, 0xA4CF }, { 0xA960, 0xA97F }, { 0xAC00, 0xD7A3 }, { 0xF900, 0xFAFF },
	{ 0xFE10, 0xFE1F }, { 0xFE30, 0xFE6F }, { 0xFF01, 0xFF60 }, { 0xFFE0, 0xFFE6 },
	{ 0x16FE0, 0x1B2FF }, { 0x1F000, 0x1FAFF }, { 0x20000, 0x3FFFD },
};

int utf8_columns(uint32_t code)
{
	if (code < combining[0].first)
		return 1;
	if (is_among(code, combining, sizeof combining / sizeof *combining))
		return 0;
	return is_among(code, wide, sizeof wide / sizeof *wide) ? 2 : 1;
}
