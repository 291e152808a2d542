#include "report/panel/page_compare.h"
#include "base/groups.h"
#include "base/hash.h"

#include <stdlib.h>
#include <string.h>

static bool are_one_figure(const void *a, const void *b, const void *context)
{
	const struct line *one = *(struct line *const *)a, *two = *(struct line *const *)b;

	(void)context;
	return strcmp(one->label, two->label) == 0 && strcmp(one->under, two->under) == 0;
}

static uint64_t hash_figure(const void *item, const void *context)
{
	const struct line *line = *(struct line *const *)item;
	uint64_t hash = hash_bytes(HASH_EMPTY, line->label, strlen(line->label) + 1);

	(void)context;
	return hash_bytes(hash, line->under, strlen(line->under));
}

/* Adds the page's figures; returns how many. */
static int list_figures(struct line **list, const struct page *page)
{
	int count = 0;

	for (size_t i = 0; i < page->count; i++)
		if (page->lines[i].kind == LINE_FIGURE)
			list[count++] = &page->lines[i];
	return count;
}

void page_compare(struct page *page, const struct page *before)
{
	struct line **list = memory_new(before->count + page->count, sizeof *list);
	int old_count = list_figures(list, before);
	int count = old_count + list_figures(list + old_count, page);
	struct groups groups = groups_make(list, count, sizeof *list,
		&(struct alike){ are_one_figure, hash_figure, NULL });
	int *partners = groups_partners(&groups, old_count);

	for (int i = old_count; i < groups.item_count; i++)
		list[i]->is_changed = partners[i] == NO_PARTNER ||
			strcmp(list[partners[i]]->value, list[i]->value) != 0;
	free(partners);
	groups_fini(&groups);
	free(list);
}
