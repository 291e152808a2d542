#include "screen/paste.h"

#include <string.h>

enum { PASTE_MOST = 1 << 20, MARK_LENGTH = sizeof PASTE_END - 1 };

void paste_start(struct paste *paste)
{
	paste->is_handed_over = false;
	text_clear(&paste->text);
}

void paste_add(struct paste *paste, const unsigned char *bytes, size_t count)
{
	if (count == 0)
		return;
	if (paste->is_handed_over)
		paste_start(paste);
	if (paste->text.length + count <= PASTE_MOST)
		text_add_bytes(&paste->text, (const char *)bytes, count);
}

bool paste_hand_over(struct paste *paste)
{
	bool was_handed_over = paste->is_handed_over;

	paste->is_handed_over = true;
	return !was_handed_over;
}

static size_t mark_begun(const unsigned char *bytes, size_t count)
{
	size_t most = MARK_LENGTH - 1;

	for (size_t begun = count < most ? count : most; begun; begun--)
		if (memcmp(bytes + count - begun, PASTE_END, begun) == 0)
			return begun;
	return 0;
}

static size_t character_begun(const unsigned char *bytes, size_t count)
{
	for (size_t begun = 1; begun <= 3 && begun <= count; begun++) {
		unsigned char byte = bytes[count - begun];
		size_t length = byte >= 0xf0 ? 4 : byte >= 0xe0 ? 3 : 2;

		if (byte < 0x80)
			return 0;
		if (byte >= 0xc0)
			return length > begun ? begun : 0;
	}
	return 0;
}

size_t paste_begun(const unsigned char *bytes, size_t count)
{
	size_t mark = mark_begun(bytes, count), character = character_begun(bytes, count);

	return mark > character ? mark : character;
}
