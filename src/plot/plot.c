#include "plot/plot.h"
#include "base/memory.h"
#include "base/number.h"

#include <assert.h>
#include <stdlib.h>
#include <string.h>

static struct details details_empty(void)
{
	return (struct details){ .head.kind = BLOCK_HEAD, .allow.kind = BLOCK_ALLOW,
		.rates.kind = BLOCK_RATES };
}

const struct value_rule extra_rule = { .kind = VALUE_AMOUNT, .least = MILLION / 1000,
	.most = 100000 * MILLION, .quantity = QUANTITY_GOODS };

void details_fini(struct details *details)
{
	block_fini(&details->head);
	block_fini(&details->allow);
	block_fini(&details->rates);
	for (size_t i = 0; i < details->legend_count; i++) {
		free(details->legend[i].name);
		block_fini(&details->legend[i].block);
	}
	free(details->legend);
	for (size_t i = 0; i < details->fence_count; i++)
		fence_fini(&details->fences[i]);
	free(details->fences);
	plants_fini(&details->plants);
	surroundings_fini(&details->around);
	levels_fini(&details->levels);
	names_fini(&details->names);
	for (size_t i = 0; i < details->extra_count; i++)
		free(details->extras[i].name);
	free(details->extras);
	*details = details_empty();
}

struct details details_copy(const struct details *details)
{
	struct details copy = {
		.head = block_copy(&details->head),
		.allow = block_copy(&details->allow),
		.rates = block_copy(&details->rates),
		.legend = memory_new(details->legend_count, sizeof *copy.legend),
		.legend_count = details->legend_count,
		.legend_capacity = details->legend_count,
		.fences = memory_new(details->fence_count, sizeof *copy.fences),
		.fence_count = details->fence_count,
		.fence_capacity = details->fence_count,
		.plants = plants_copy(&details->plants),
		.around = surroundings_copy(&details->around),
		.levels = levels_copy(&details->levels),
		.finish = details->finish,
	};

	for (size_t i = 0; i < details->legend_count; i++) {
		copy.legend[i] = details->legend[i];
		copy.legend[i].name = memory_string(details->legend[i].name);
		copy.legend[i].block = block_copy(&details->legend[i].block);
	}
	for (size_t i = 0; i < details->fence_count; i++)
		copy.fences[i] = fence_copy(&details->fences[i]);
	for (size_t i = 0; i < details->names.count; i++)
		names_add(&copy.names, details->names.items[i].at,
			memory_string(details->names.items[i].text));
	for (size_t i = 0; i < details->extra_count; i++)
		details_add_extra(&copy, memory_string(details->extras[i].name),
			details->extras[i].amount);
	return copy;
}

bool extras_equal(const struct details *a, const struct details *b)
{
	bool is_equal = a->extra_count == b->extra_count;

	for (size_t i = 0; is_equal && i < a->extra_count; i++)
		is_equal = strcmp(a->extras[i].name, b->extras[i].name) == 0 &&
			amount_equal(&a->extras[i].amount, &b->extras[i].amount);
	return is_equal;
}

bool names_equal(const struct names *a, const struct names *b)
{
	bool is_equal = a->count == b->count;

	for (size_t i = 0; is_equal && i < a->count; i++)
		is_equal = place_equal(a->items[i].at, b->items[i].at) &&
			strcmp(a->items[i].text, b->items[i].text) == 0;
	return is_equal;
}

bool details_equal(const struct details *a, const struct details *b)
{
	if (a->legend_count != b->legend_count || a->fence_count != b->fence_count ||
		!block_equal(&a->head, &b->head) || !block_equal(&a->allow, &b->allow) ||
		!block_equal(&a->rates, &b->rates) || !extras_equal(a, b) ||
		!names_equal(&a->names, &b->names) ||
		!plants_equal(&a->plants, &b->plants) ||
		!surroundings_equal(&a->around, &b->around) ||
		!levels_equal(&a->levels, &b->levels) || !finish_equal(&a->finish, &b->finish))
		return false;
	for (size_t i = 0; i < a->legend_count; i++) {
		const struct entry *one = &a->legend[i], *other = &b->legend[i];

		if (one->letter != other->letter || one->class != other->class ||
			strcmp(one->name, other->name) != 0 ||
			!block_equal(&one->block, &other->block))
			return false;
	}
	for (size_t i = 0; i < a->fence_count; i++)
		if (!fence_equal(&a->fences[i], &b->fences[i]))
			return false;
	return true;
}

struct fence *details_add_fence(struct details *details, char *name)
{
	struct fence *fence;

	details->fences = memory_grow(details->fences, details->fence_count,
		&details->fence_capacity, sizeof *details->fences);
	fence = &details->fences[details->fence_count++];
	*fence = (struct fence){ .name = name, .block.kind = BLOCK_FENCE };
	return fence;
}

void names_add(struct names *names, struct place at, char *text)
{
	names->items = memory_grow(names->items, names->count, &names->capacity,
		sizeof *names->items);
	names->items[names->count++] = (struct name){ at, text };
}

void names_remove(struct names *names, size_t index)
{
	struct name *name = &names->items[index];

	free(name->text);
	memmove(name, name + 1, (--names->count - index) * sizeof *name);
}

void names_fini(struct names *names)
{
	for (size_t i = 0; i < names->count; i++)
		free(names->items[i].text);
	free(names->items);
	*names = NAMES_EMPTY;
}

void details_add_extra(struct details *details, char *name, struct amount amount)
{
	details->extras = memory_grow(details->extras, details->extra_count,
		&details->extra_capacity, sizeof *details->extras);
	details->extras[details->extra_count++] = (struct extra){ name, amount };
}

struct entry *details_add_entry(struct details *details, enum plot_class class, char letter,
	char *name)
{
	struct entry *entry;

	details->legend = memory_grow(details->legend, details->legend_count,
		&details->legend_capacity, sizeof *details->legend);
	entry = &details->legend[details->legend_count++];
	*entry = (struct entry){ .letter = letter, .class = class, .name = name,
		.block.kind = class_block(class) };
	return entry;
}

void plot_init(struct plot *plot)
{
	*plot = (struct plot){ .details = details_empty() };
}

void plot_fini(struct plot *plot)
{
	details_fini(&plot->details);
	ground_fini(&plot->ground);
}

void ground_init(struct ground *ground, int columns, int rows)
{
	*ground = (struct ground){ columns, rows, NULL };
	ground->cells = memory_new(ground_count(ground), 1);
	memset(ground->cells, OPEN_GROUND, ground_count(ground));
}

struct ground ground_copy(const struct ground *ground)
{
	struct ground copy;

	ground_init(&copy, ground->columns, ground->rows);
	memcpy(copy.cells, ground->cells, ground_count(ground));
	return copy;
}

void ground_fini(struct ground *ground)
{
	free(ground->cells);
	*ground = (struct ground){ 0, 0, NULL };
}

bool ground_holds(const struct ground *ground, int x, int y)
{
	return x >= 0 && y >= 0 && x < ground->columns && y < ground->rows;
}

struct place ground_nearest(const struct ground *ground, struct place cell)
{
	return (struct place){ held(cell.x, 0, ground->columns - 1),
		held(cell.y, 0, ground->rows - 1) };
}

size_t ground_count(const struct ground *ground)
{
	return (size_t)ground->columns * (size_t)ground->rows;
}

char *ground_at(const struct ground *ground, int x, int y)
{
	return ground->cells + (size_t)y * (size_t)ground->columns + (size_t)x;
}

char ground_cell(const struct ground *ground, int x, int y)
{
	assert(ground_holds(ground, x, y));
	return *ground_at(ground, x, y);
}

const struct entry *plot_entry(const struct plot *plot, char letter)
{
	for (size_t i = 0; i < plot->details.legend_count; i++)
		if (plot->details.legend[i].letter == letter)
			return &plot->details.legend[i];
	return NULL;
}

enum plot_class plot_class_of(const struct plot *plot, char letter)
{
	const struct entry *entry = plot_entry(plot, letter);

	return entry ? entry->class : CLASS_OPEN;
}

enum units plot_units(const struct plot *plot)
{
	return block_number(&plot->details.head, HEAD_UNITS) == UNITS_METRIC ? UNITS_METRIC :
		UNITS_IMPERIAL;
}

nm plot_cell(const struct plot *plot)
{
	return block_length(&plot->details.head, HEAD_CELL);
}

const char *class_word(enum plot_class class)
{
	static const char *const words[CLASSES] = { "bed", "path", "lawn", "fixture", "open",
		"boundary" };

	return words[class];
}

enum block_kind class_block(enum plot_class class)
{
	static const enum block_kind kinds[] = { BLOCK_BED, BLOCK_PATH, BLOCK_LAWN, BLOCK_FIXTURE };

	assert(class <= CLASS_FIXTURE);
	return kinds[class];
}

bool class_takes_letter(enum plot_class class, char letter)
{
	if (class == CLASS_FIXTURE)
		return letter >= 'A' && letter <= 'Z';
	return letter >= 'a' && letter <= 'z';
}
