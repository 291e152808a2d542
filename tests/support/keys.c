#include "support/keys.h"

#include <curses.h>
#include <stdio.h>
#include <string.h>
#include <term.h>

struct key {
	const char *name;
	const char *bytes;        /* the same on all terminals; NULL: as terminfo says */
	const char *capability;
};

static const struct key keys[] = {
	{ "enter", "\r", NULL },
	{ "tab", "\t", NULL },
	{ "space", " ", NULL },
	{ "escape", "\033", NULL },
	{ "up", NULL, "kcuu1" },
	{ "down", NULL, "kcud1" },
	{ "left", NULL, "kcub1" },
	{ "right", NULL, "kcuf1" },
	{ "home", NULL, "khome" },
	{ "end", NULL, "kend" },
	{ "pageup", NULL, "kpp" },
	{ "pagedown", NULL, "knp" },
	{ "insert", NULL, "kich1" },
	{ "delete", NULL, "kdch1" },
	{ "backspace", NULL, "kbs" },
	{ "shift-tab", NULL, "kcbt" },
	{ "shift-left", NULL, "kLFT" },
	{ "shift-right", NULL, "kRIT" },
	{ "ctrl-left", NULL, "kLFT5" },
	{ "ctrl-right", NULL, "kRIT5" },
	{ "ctrl-up", NULL, "kUP5" },
	{ "ctrl-down", NULL, "kDN5" },
	{ "f1", NULL, "kf1" },
	{ "f2", NULL, "kf2" },
	{ "f5", NULL, "kf5" },
	{ "f9", NULL, "kf9" },
};

static bool bytes_set(char *bytes, size_t size, const char *from)
{
	return (size_t)snprintf(bytes, size, "%s", from) < size;
}

static bool capability_bytes(const char *capability, const char *term, char *bytes, size_t size)
{
	int error;

	if (setupterm(term, -1, &error) != OK)
		return false;
	const char *found = tigetstr(capability);
	bool is_key = found && found != (const char *)-1 && bytes_set(bytes, size, found);
	del_curterm(cur_term);
	return is_key;
}

static bool is_one_character(const char *name)
{
	if (!name[0])
		return false;
	do
		name++;
	while (((unsigned char)*name & 0xc0) == 0x80);
	return !*name;
}

bool key_bytes(const char *name, const char *term, char *bytes, size_t size)
{
	if (is_one_character(name))
		return bytes_set(bytes, size, name);
	if (!strncmp(name, "ctrl-", 5) && name[5] >= 'a' && name[5] <= 'z' && !name[6])
		return bytes_set(bytes, size, (const char[]) { (char)(name[5] - 'a' + 1), 0 });
	for (size_t i = 0; i < sizeof keys / sizeof *keys; i++)
		if (!strcmp(name, keys[i].name))
			return keys[i].bytes
				? bytes_set(bytes, size, keys[i].bytes)
				: capability_bytes(keys[i].capability, term, bytes, size);
	return false;
}
