/* What grows: kinds of plants, where single ones stand and which bands of beds are filled. */
#ifndef PLOT_PLANTS_H
#define PLOT_PLANTS_H

#include "plot/block.h"

/* Thirds of a bed by the distance from where one can walk up to it, or all of it. */
enum band { BAND_WHOLE, BAND_FRONT, BAND_MIDDLE, BAND_BACK };
enum { BANDS = BAND_BACK + 1 };

/* A band filled with one kind: of all beds of a letter, or of the bed that holds a cell. */
struct drift {
	char letter;     /* of the beds; 0: the one that holds the cell */
	struct place at; /* a cell of the ground */
	enum band band;
};

/* A kind of plant. A specimen stands in the middle of its cell, one of a kind in a cell. */
struct plant {
	char letter; /* a-z, of no entry of the legend and no other plant */
	char *name;  /* owned */
	struct block block;
	struct place *specimens; /* owned, as they were placed */
	size_t specimen_count, specimen_capacity;
	struct drift *drifts; /* owned */
	size_t drift_count, drift_capacity;
};

/* Start from PLANTS_NONE, end with plants_fini. */
struct plants {
	struct plant *items; /* owned */
	size_t count, capacity;
};
#define PLANTS_NONE ((struct plants){ NULL, 0, 0 })

void plants_fini(struct plants *plants);
struct plants plants_copy(const struct plants *plants);
bool plants_equal(const struct plants *a, const struct plants *b);

/* Appends a kind that stands nowhere, taking over name; its attributes are unset. */
struct plant *plants_add(struct plants *plants, char letter, char *name);
void plants_remove(struct plants *plants, size_t index);
/* True for a letter that a plant may have. */
bool plant_takes_letter(char letter);
/* NULL where no plant has the letter. */
struct plant *plants_find(const struct plants *plants, char letter);

/* From one to the next: as told, else the default of a plot of these units. How wide it is when it
 * is grown: as told, else its spacing. */
nm plant_spacing(const struct plant *plant, enum units units);
nm plant_spread(const struct plant *plant, enum units units);

/* Which of its specimens is the cell's; the count where none is. */
size_t plant_specimen(const struct plant *plant, struct place at);
void plant_add_specimen(struct plant *plant, struct place at);
void plant_remove_specimen(struct plant *plant, size_t index);
bool drift_equal(const struct drift *a, const struct drift *b);
void plant_add_drift(struct plant *plant, struct drift drift);
void plant_remove_drift(struct plant *plant, size_t index);

/* "whole" ... "back", as in the format; NULL at the end. */
extern const char *const band_words[BANDS + 1];

#endif
