#include "report/text/sawn.h"
#include "base/number.h"

#include <stdlib.h>

struct sawn sawn_make(const struct cutting *cutting)
{
	struct batch *sizes = NULL;
	size_t capacity = 0, count = 0;

	for (int i = 0; i < cutting->cut_count; i++) {
		const struct cut *cut = &cutting->cuts[i];

		for (int j = 0; j < cut->piece_count; j++) {
			sizes = memory_grow(sizes, count, &capacity, sizeof *sizes);
			sizes[count++] = (struct batch){ cut->pieces[j], cut->blocks };
		}
	}
	return (struct sawn){ cutting, sizes, (int)batches_join(sizes, count) };
}

void sawn_fini(struct sawn *sawn)
{
	free(sawn->sizes);
}

char sawn_letter(int size)
{
	if (size >= SAWN_LETTERS)
		return SAWN_UNNAMED;
	return (char)(size < SAWN_LETTERS / 2 ? 'a' + size : 'A' + size - SAWN_LETTERS / 2);
}

static int compare_sizes(const void *a, const void *b)
{
	const struct batch *one = a, *other = b;

	return compare(other->place, one->place);
}

int sawn_size(const struct sawn *sawn, nm place)
{
	const struct batch *size = bsearch(&(struct batch){ place, 0 }, sawn->sizes,
		(size_t)sawn->count, sizeof *sawn->sizes, compare_sizes);

	return size ? (int)(size - sawn->sizes) : sawn->count;
}

bool sawn_is_of(const struct sawn *sawn, const struct wall *wall, enum block_use use)
{
	const struct cutting *cutting = sawn->cutting;

	return cutting->use == use && cutting->joint == wall->joint &&
		size_equal(&cutting->block, use == USE_CAP ? &wall->cap_block : &wall->block);
}

struct all_sawn all_sawn_make(const struct cuttings *cuttings)
{
	struct all_sawn all = { memory_new((size_t)cuttings->count, sizeof *all.list),
		cuttings->count };

	for (int i = 0; i < all.count; i++)
		all.list[i] = sawn_make(&cuttings->list[i]);
	return all;
}

void all_sawn_fini(struct all_sawn *all)
{
	for (int i = 0; i < all->count; i++)
		sawn_fini(&all->list[i]);
	free(all->list);
}

const struct sawn *all_sawn_of(const struct all_sawn *all, const struct wall *wall,
	enum block_use use)
{
	const struct sawn *sawn = all->list;

	while (!sawn_is_of(sawn, wall, use))
		sawn++;
	return sawn;
}
