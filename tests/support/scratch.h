/* An empty folder of one's own, for a test that writes files. It lies under the build folder:
 * what a failed test leaves there can be looked at, and goes with `make clean`. A test that runs
 * tests which fail has theirs in a folder that it names in the environment, as SCRATCH_FOLDER. */
#ifndef SUPPORT_SCRATCH_H
#define SUPPORT_SCRATCH_H

/* A new folder; its absolute path, which the caller frees with free(). */
char *scratch_new(void);

/* Removes the folder with all that is in it and frees the path. NULL is let pass. */
void scratch_remove(char *folder);

#endif
