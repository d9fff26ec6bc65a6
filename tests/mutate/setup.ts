/** One seed for every property, so that a mutation run can be run again; a failure need not be made small. */
import fc from "fast-check";

fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: 1855, endOnFailure: true });
