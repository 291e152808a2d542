#include "plot/edit/plants_move.h"
#include "base/memory.h"
#include "plot/cell_set.h"

void specimens_move(struct plants *plants, const struct ground *size, names_way *way,
	const void *how)
{
	for (size_t i = 0; i < plants->count; i++) {
		struct plant *plant = &plants->items[i];
		struct cell_set taken = cell_set_of(size);
		size_t kept = 0;

		for (size_t j = 0; j < plant->specimen_count; j++) {
			struct place at = plant->specimens[j];

			if (way(how, &at) && cell_set_add(&taken, at))
				plant->specimens[kept++] = at;
		}
		plant->specimen_count = kept;
		cell_set_fini(&taken);
	}
}

void drifts_move(struct plants *plants, struct ground *before, names_way *way, const void *how)
{
	for (size_t i = 0; i < plants->count; i++) {
		struct plant *plant = &plants->items[i];

		for (size_t j = 0; j < plant->drift_count;) {
			struct drift *drift = &plant->drifts[j];

			if (drift->letter || names_move_cell(before, &drift->at, way, how))
				j++;
			else
				plant_remove_drift(plant, j);
		}
	}
}

/* ---- Taken along ----------------------------------------------------------------------------- */

struct plants plants_taken(const struct plants *plants, names_way *way, const void *how)
{
	struct plants taken = PLANTS_NONE;

	for (size_t i = 0; i < plants->count; i++) {
		const struct plant *plant = &plants->items[i];
		struct plant *to = plants_add(&taken, plant->letter, memory_string(plant->name));

		for (size_t j = 0; j < plant->specimen_count; j++) {
			struct place at = plant->specimens[j];

			if (way(how, &at))
				plant_add_specimen(to, at);
		}
		for (size_t j = 0; j < plant->drift_count; j++) {
			struct drift drift = plant->drifts[j];

			if (!drift.letter && way(how, &drift.at))
				plant_add_drift(to, drift);
		}
	}
	return taken;
}

static int images_within(const struct mirror *mirror, const struct ground *ground,
	struct place at, struct place images[IMAGES_MOST])
{
	int count = mirror_cells(mirror, at.x, at.y, images), kept = 0;

	for (int i = 0; i < count; i++)
		if (ground_holds(ground, images[i].x, images[i].y))
			images[kept++] = images[i];
	return kept;
}

static bool has_drift(const struct plant *plant, struct drift drift)
{
	for (size_t i = 0; i < plant->drift_count; i++)
		if (drift_equal(&plant->drifts[i], &drift))
			return true;
	return false;
}

static void add_images(struct plant *to, const struct plant *plant, const struct mirror *mirror,
	const struct ground *ground)
{
	struct cell_set taken = cell_set_of(ground);
	struct place images[IMAGES_MOST];

	for (size_t i = 0; i < plant->specimen_count; i++)
		for (int n = images_within(mirror, ground, plant->specimens[i], images); n > 0; n--)
			if (cell_set_add(&taken, images[n - 1]))
				plant_add_specimen(to, images[n - 1]);
	cell_set_fini(&taken);
	for (size_t i = 0; i < plant->drift_count; i++) {
		struct drift drift = plant->drifts[i];

		for (int n = images_within(mirror, ground, drift.at, images); n > 0; n--) {
			drift.at = images[n - 1];
			if (!has_drift(to, drift))
				plant_add_drift(to, drift);
		}
	}
}

struct plants plants_imaged(const struct plants *plants, const struct mirror *mirror,
	const struct ground *ground)
{
	struct plants imaged = PLANTS_NONE;

	for (size_t i = 0; i < plants->count; i++) {
		const struct plant *plant = &plants->items[i];

		add_images(plants_add(&imaged, plant->letter, memory_string(plant->name)), plant,
			mirror, ground);
	}
	return imaged;
}

/* ---- Coming and going ------------------------------------------------------------------------ */

/* Those that come are looked up by their cells: there may be as many as the ground has. */
static int64_t specimens_replace(struct plant *plant, const struct plant *coming,
	const struct ground *ground, const struct plants_change *change)
{
	struct cell_set wanted = cell_set_of(ground);
	int64_t changed = 0;
	size_t kept = 0;

	for (size_t i = 0; i < coming->specimen_count; i++)
		cell_set_add(&wanted, coming->specimens[i]);
	for (size_t i = 0; i < plant->specimen_count; i++) {
		struct place at = plant->specimens[i], to = at;

		if (cell_set_take(&wanted, at) || change->stays(change->how, &to))
			plant->specimens[kept++] = at;
	}
	changed += (int64_t)(plant->specimen_count - kept);
	plant->specimen_count = kept;
	for (size_t i = 0; i < coming->specimen_count; i++)
		if (cell_set_take(&wanted, coming->specimens[i])) {
			plant_add_specimen(plant, coming->specimens[i]);
			changed++;
		}
	cell_set_fini(&wanted);
	return changed;
}

static bool drift_stays(struct drift *drift, const struct plants_change *change)
{
	return change->before ?
		names_move_cell(change->before, &drift->at, change->stays, change->how) :
		change->stays(change->how, &drift->at);
}

static int64_t drifts_replace(struct plant *plant, const struct plant *coming,
	const struct plants_change *change)
{
	int64_t changed = 0;

	for (size_t i = 0; i < plant->drift_count;) {
		struct drift *drift = &plant->drifts[i];

		if (drift->letter || has_drift(coming, *drift) || drift_stays(drift, change)) {
			i++;
			continue;
		}
		plant_remove_drift(plant, i);
		changed++;
	}
	for (size_t i = 0; i < coming->drift_count; i++)
		if (!has_drift(plant, coming->drifts[i])) {
			plant_add_drift(plant, coming->drifts[i]);
			changed++;
		}
	return changed;
}

int64_t plants_replace(struct plot *plot, const struct plants_change *change)
{
	static const struct plant none = { 0 };
	struct plants *plants = &plot->details.plants;
	int64_t changed = 0;

	for (size_t i = 0; i < plants->count; i++) {
		struct plant *plant = &plants->items[i];
		const struct plant *coming = plants_find(change->coming, plant->letter);

		if (!coming)
			coming = &none;
		changed += specimens_replace(plant, coming, &plot->ground, change);
		changed += drifts_replace(plant, coming, change);
	}
	return changed;
}

/* ---- Folding --------------------------------------------------------------------------------- */

struct side {
	const struct mirror *mirror;
	const struct ground *ground;
	struct place from;
};

static bool is_beside(const void *how, struct place *at)
{
	const struct side *side = how;

	return mirror_is_beside(side->mirror, side->from, at->x, at->y);
}

/* Where the mirror leads beyond the plan there is nothing to be laid over it. */
static bool has_no_original(const void *how, struct place *at)
{
	const struct side *side = how;
	struct place images[IMAGES_MOST];

	for (int n = images_within(side->mirror, side->ground, *at, images); n > 0; n--)
		if (is_beside(side, &images[n - 1]))
			return false;
	return true;
}

void plants_fold(struct plot *plot, struct place from)
{
	struct mirror mirror = mirror_of(plot);
	const struct side side = { &mirror, &plot->ground, from };
	struct plants taken = plants_taken(&plot->details.plants, is_beside, &side);
	struct plants coming = plants_imaged(&taken, &mirror, &plot->ground);

	plants_replace(plot, &(struct plants_change){ &coming, has_no_original, &side, NULL });
	plants_fini(&taken);
	plants_fini(&coming);
}
