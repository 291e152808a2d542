#include "report/words/groups.h"
#include "base/memory.h"

#include <stdlib.h>

struct list {
	const char *items;
	size_t size;
	groups_compare *compare;
	const void *context;
};

static int compare_items(const struct list *list, int a, int b)
{
	return list->compare(list->items + (size_t)a * list->size,
		list->items + (size_t)b * list->size, list->context);
}

static int by_item_then_index(const void *a, const void *b, void *list)
{
	int one = *(const int *)a, other = *(const int *)b;
	int order = compare_items(list, one, other);

	return order ? order : one - other;
}

static int by_first_member(const void *a, const void *b)
{
	return ((const struct group *)a)->members[0] - ((const struct group *)b)->members[0];
}

struct groups groups_make(const void *items, int count, size_t size, groups_compare *compare,
	const void *context)
{
	struct list list = { items, size, compare, context };
	struct groups groups = {
		.list = memory_new((size_t)count, sizeof *groups.list),
		.members = memory_new((size_t)count, sizeof *groups.members),
	};

	for (int i = 0; i < count; i++)
		groups.members[i] = i;
	qsort_r(groups.members, (size_t)count, sizeof *groups.members, by_item_then_index, &list);
	for (int i = 0; i < count; i++) {
		const int *members = groups.members;

		if (i == 0 || compare_items(&list, members[i - 1], members[i]) != 0)
			groups.list[groups.count++] = (struct group){ &members[i], 0 };
		groups.list[groups.count - 1].count++;
	}
	qsort(groups.list, (size_t)groups.count, sizeof *groups.list, by_first_member);
	return groups;
}

void groups_fini(struct groups *groups)
{
	free(groups->list);
	free(groups->members);
	*groups = (struct groups){ NULL, 0, NULL };
}
