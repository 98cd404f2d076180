# METADATA
# title: An ammonia hose was tested below the pressure its assembly must stand
# description: |
#   The US ammonia rule wants the assembled hose able to stand 500 psig. A test at less does not show
#   that, however good the hose is.
#   A hose behind a regulator has a rule of its own.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: [carries_ammonia, "!low_side", "regime=29 CFR 1910.111"]
#   needs: []
#   absent: [hoses.test_pressure_kpa]
#   message: "{part} was tested at {have_kpa}; the ammonia rule wants an assembly that stands {need_kpa}"
#   action: "Ask the assembler for a test at that pressure, or for a statement that the assembly stands it."
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(8)(ii)"
#       standing: published
package rules.inspection.ammonia_assembly_tested_too_low

report contains {
	"subject": h.id,
	"part": h.id,
	"have_kpa": h.test_pressure_kpa,
	"need_kpa": _least,
} if {
	"29 CFR 1910.111" in input.line.regimes
	some h in input.hoses
	h.carries_ammonia
	not h.low_side
	h.test_pressure_kpa < _least
}

# 500 psig = 3447.4 kPa, rounded down like the figure it is compared with.
_least := 3447
