#include "support/stroll.h"

#include <stdlib.h>
#include <string.h>

/* The next name, and how often it is pressed; 0 at the end. */
static int next_key(const char **names, struct text *name)
{
	size_t length = strcspn(*names, " ");
	int times = 1;

	if (!length)
		return 0;
	text_clear(name);
	text_add_bytes(name, *names, length);
	*names += length + strspn(*names + length, " ");
	if ((*names)[0] == 'x' && (*names)[1] >= '1' && (*names)[1] <= '9') {
		times = atoi(*names + 1);
		*names += strcspn(*names, " ");
		*names += strspn(*names, " ");
	}
	return times;
}

static void add_pressed(const char *names, struct text *list)
{
	struct text name = TEXT_EMPTY;
	int times;

	while ((times = next_key(&names, &name)) > 0)
		while (times-- > 0)
			text_print(list, "%s\n", name.bytes);
	text_fini(&name);
}

void stroll_list(const struct stroll *way, size_t count, struct text *list)
{
	for (size_t i = 0; i < count; i++) {
		if (way[i].typed)
			text_print(list, "\"%s\"\n", way[i].typed);
		add_pressed(way[i].pressed, list);
	}
}

struct strolled stroll_count(const struct stroll *way, size_t count)
{
	struct strolled strolled = { 0, 0 };
	struct text list = TEXT_EMPTY;

	stroll_list(way, count, &list);
	for (const char *at = list.bytes; at && *at; at = strchr(at, '\n') + 1)
		*(at[0] == '"' && at[1] != '\n' ? &strolled.typed : &strolled.presses) += 1;
	text_fini(&list);
	return strolled;
}

struct strolled stroll_walk(struct terminal *t, const struct stroll *way, size_t count)
{
	for (size_t i = 0; i < count; i++) {
		if (way[i].typed)
			terminal_type(t, way[i].typed);
		terminal_keys(t, way[i].pressed);
		if (way[i].seen)
			terminal_wait(t, way[i].seen);
	}
	return stroll_count(way, count);
}
