#include "plot/surroundings.h"
#include "base/memory.h"

#include <stdlib.h>
#include <string.h>

const char *const service_words[SERVICE_KINDS + 1] = { "water", "gas", "power", "telecom", "drain",
	"other", NULL };
const char *const service_states[] = { "existing", "to-lay", NULL };

const struct value_rule radius_rule = { .kind = VALUE_LENGTH, .least = NM_PER_INCH,
	.most = 100 * NM_PER_M };
const struct value_rule height_rule = { .kind = VALUE_LENGTH, .least = NM_PER_INCH,
	.most = 100 * NM_PER_M };
const struct value_rule tie_rule = { .kind = VALUE_LENGTH, .least = NM_PER_INCH,
	.most = 1000 * NM_PER_M };

/* ---- Services -------------------------------------------------------------------------------- */

struct service *services_add(struct services *services, enum service_kind kind, bool is_to_lay,
	char *name)
{
	struct service *service;

	services->items = memory_grow(services->items, services->count, &services->capacity,
		sizeof *services->items);
	service = &services->items[services->count++];
	*service = (struct service){ .kind = kind, .is_to_lay = is_to_lay, .name = name,
		.block.kind = BLOCK_SERVICE };
	return service;
}

void services_legs(const struct services *services, struct legs *out)
{
	for (size_t i = 0; i < services->count; i++)
		routes_legs(&services->items[i].routes, out);
}

static void service_fini(struct service *service)
{
	free(service->name);
	block_fini(&service->block);
	routes_fini(&service->routes);
}

void services_remove(struct services *services, size_t index)
{
	struct service *service = &services->items[index];

	service_fini(service);
	memmove(service, service + 1, (--services->count - index) * sizeof *service);
}

static void services_fini(struct services *services)
{
	for (size_t i = 0; i < services->count; i++)
		service_fini(&services->items[i]);
	free(services->items);
}

static struct services services_copy(const struct services *services)
{
	struct services copy = { NULL, 0, 0 };

	for (size_t i = 0; i < services->count; i++) {
		const struct service *from = &services->items[i];
		struct service *to = services_add(&copy, from->kind, from->is_to_lay,
			memory_string(from->name));

		to->block = block_copy(&from->block);
		to->routes = routes_copy(&from->routes);
	}
	return copy;
}

static bool services_equal(const struct services *a, const struct services *b)
{
	bool is_equal = a->count == b->count;

	for (size_t i = 0; is_equal && i < a->count; i++) {
		const struct service *one = &a->items[i], *other = &b->items[i];

		is_equal = one->kind == other->kind && one->is_to_lay == other->is_to_lay &&
			strcmp(one->name, other->name) == 0 &&
			block_equal(&one->block, &other->block) &&
			routes_equal(&one->routes, &other->routes);
	}
	return is_equal;
}

/* ---- Houses, shade and what is kept ---------------------------------------------------------- */

static bool rectangle_equal(const struct rectangle *a, const struct rectangle *b)
{
	return a->left == b->left && a->top == b->top && a->right == b->right &&
		a->bottom == b->bottom;
}

struct obstacle *obstacles_add(struct obstacles *obstacles, char *name)
{
	struct obstacle *obstacle;

	obstacles->items = memory_grow(obstacles->items, obstacles->count, &obstacles->capacity,
		sizeof *obstacles->items);
	obstacle = &obstacles->items[obstacles->count++];
	*obstacle = (struct obstacle){ .name = name };
	return obstacle;
}

static void obstacle_fini(struct obstacle *obstacle)
{
	free(obstacle->name);
	notes_fini(&obstacle->notes);
}

void obstacles_remove(struct obstacles *obstacles, size_t index)
{
	struct obstacle *obstacle = &obstacles->items[index];

	obstacle_fini(obstacle);
	memmove(obstacle, obstacle + 1, (--obstacles->count - index) * sizeof *obstacle);
}

static void obstacles_fini(struct obstacles *obstacles)
{
	for (size_t i = 0; i < obstacles->count; i++)
		obstacle_fini(&obstacles->items[i]);
	free(obstacles->items);
}

static struct obstacles obstacles_copy(const struct obstacles *obstacles)
{
	struct obstacles copy = { NULL, 0, 0 };

	for (size_t i = 0; i < obstacles->count; i++) {
		const struct obstacle *from = &obstacles->items[i];
		struct obstacle *to = obstacles_add(&copy, memory_string(from->name));

		to->notes = notes_copy(&from->notes);
		to->height = from->height;
		to->radius = from->radius;
		to->at = from->at;
		to->cells = from->cells;
	}
	return copy;
}

static bool obstacles_equal(const struct obstacles *a, const struct obstacles *b)
{
	bool is_equal = a->count == b->count;

	for (size_t i = 0; is_equal && i < a->count; i++) {
		const struct obstacle *one = &a->items[i], *other = &b->items[i];

		is_equal = strcmp(one->name, other->name) == 0 &&
			notes_equal(&one->notes, &other->notes) && one->height == other->height &&
			one->radius == other->radius && place_equal(one->at, other->at) &&
			rectangle_equal(&one->cells, &other->cells);
	}
	return is_equal;
}

/* ---- Ties ------------------------------------------------------------------------------------ */

void ties_add(struct ties *ties, struct place at, char *name, nm length)
{
	ties->items = memory_grow(ties->items, ties->count, &ties->capacity, sizeof *ties->items);
	ties->items[ties->count++] = (struct tie){ at, name, length };
}

void ties_remove(struct ties *ties, size_t index)
{
	struct tie *tie = &ties->items[index];

	free(tie->name);
	memmove(tie, tie + 1, (--ties->count - index) * sizeof *tie);
}

static void ties_fini(struct ties *ties)
{
	for (size_t i = 0; i < ties->count; i++)
		free(ties->items[i].name);
	free(ties->items);
}

static struct ties ties_copy(const struct ties *ties)
{
	struct ties copy = { NULL, 0, 0 };

	for (size_t i = 0; i < ties->count; i++)
		ties_add(&copy, ties->items[i].at, memory_string(ties->items[i].name),
			ties->items[i].length);
	return copy;
}

static bool ties_equal(const struct ties *a, const struct ties *b)
{
	bool is_equal = a->count == b->count;

	for (size_t i = 0; is_equal && i < a->count; i++)
		is_equal = place_equal(a->items[i].at, b->items[i].at) &&
			strcmp(a->items[i].name, b->items[i].name) == 0 &&
			a->items[i].length == b->items[i].length;
	return is_equal;
}

/* ---- All ------------------------------------------------------------------------------------- */

void surroundings_fini(struct surroundings *around)
{
	services_fini(&around->services);
	obstacles_fini(&around->houses);
	obstacles_fini(&around->shades);
	obstacles_fini(&around->kept);
	ties_fini(&around->ties);
	*around = SURROUNDINGS_NONE;
}

struct surroundings surroundings_copy(const struct surroundings *around)
{
	return (struct surroundings){ services_copy(&around->services),
		obstacles_copy(&around->houses), obstacles_copy(&around->shades),
		obstacles_copy(&around->kept),
		ties_copy(&around->ties), around->has_drop, around->drop, around->has_tap,
		around->tap };
}

bool surroundings_equal(const struct surroundings *a, const struct surroundings *b)
{
	return services_equal(&a->services, &b->services) &&
		obstacles_equal(&a->houses, &b->houses) &&
		obstacles_equal(&a->shades, &b->shades) && obstacles_equal(&a->kept, &b->kept) &&
		ties_equal(&a->ties, &b->ties) && a->has_drop == b->has_drop &&
		(!a->has_drop || place_equal(a->drop, b->drop)) && a->has_tap == b->has_tap &&
		(!a->has_tap || place_equal(a->tap, b->tap));
}
