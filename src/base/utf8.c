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

bool utf8_is_text(uint32_t code)
{
	if ((code & 0xFFFE) == 0xFFFE)
		return false;
	for (size_t i = 0; i < sizeof refused / sizeof *refused; i++)
		if (code >= refused[i].first && code <= refused[i].last)
			return false;
	return true;
}

size_t utf8_count(const char *text, size_t length)
{
	size_t count = 0;

	for (size_t i = 0; i < length; i++)
		count += ((unsigned char)text[i] & 0xC0) != 0x80;
	return count;
}
