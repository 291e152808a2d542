#include "prices/allow.h"

const struct block *allow_unset(const struct book *book)
{
	static const struct block none = { .kind = BLOCK_ALLOW };

	return book ? &book->allow : &none;
}

const struct block *allow_in_force(struct arena *arena, const struct plot *plot,
	const struct book *book)
{
	struct block *allow = arena_new(arena, 1, sizeof *allow);

	*allow = (struct block){ .kind = BLOCK_ALLOW,
		.values = arena_new(arena, block_attributes(BLOCK_ALLOW), sizeof *allow->values) };
	for (enum attribute a = block_first(BLOCK_ALLOW); a <= block_last(BLOCK_ALLOW); a++) {
		const struct value *own = block_value(&plot->details.allow, a);

		allow->values[a - block_first(BLOCK_ALLOW)] =
			own->set ? *own : *block_value(allow_unset(book), a);
	}
	return allow;
}
