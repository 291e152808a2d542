/* Which things of a list are alike, so that they can be made or listed once. */
#ifndef BASE_GROUPS_H
#define BASE_GROUPS_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

struct group {
	const int *members; /* indices into the list, ascending */
	int count;          /* at least 1, unless it was stopped */
};

struct groups {
	struct group *list; /* by first member */
	int count;
	int *members;
	int *of; /* by item: its group */
	int item_count;
};

/* Whether two items are alike. */
typedef bool groups_alike(const void *a, const void *b, const void *context);
/* The same of items that are alike. */
typedef uint64_t groups_hash(const void *item, const void *context);
struct alike {
	groups_alike *are_alike;
	groups_hash *hash;
	const void *context;
};

/* Groups `count` items of the given size, in time proportional to them; where it is stopped
 * (base/stop.h), fewer of them, and some have no member yet: their members[0] is an item all the
 * same. To be freed with groups_fini. */
struct groups groups_make(const void *items, int count, size_t size, const struct alike *alike);
void groups_fini(struct groups *groups);

enum { NO_PARTNER = -1 };
/* Of a list that is one list, its first `first` items, and then another: which of the one each of
 * the other goes with and the other way round, the first of several alike with the first. By item
 * of the whole list: its partner's index in it; NO_PARTNER where there is none. Where it is stopped
 * (base/stop.h), fewer have one. To be freed. */
int *groups_partners(const struct groups *groups, int first);

#endif
