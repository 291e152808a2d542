/* The commands that print: takeoff, plan, setout, sun, drawing, snags, compare, prices
 * new. */
#ifndef REPORT_COMMAND_H
#define REPORT_COMMAND_H

/* Runs them; argv[0] is the command's name. Returns the exit status: 0, or 2 where something could
 * not be done; of compare 0 where nothing differs, 1 where something does; of snags 0 where there
 * is none, 1 where there is any. */
int command_takeoff(int argc, char **argv);
int command_plan(int argc, char **argv);
int command_setout(int argc, char **argv);
int command_sun(int argc, char **argv);
int command_drawing(int argc, char **argv);
int command_snags(int argc, char **argv);
int command_compare(int argc, char **argv);
int command_prices(int argc, char **argv);

#endif
