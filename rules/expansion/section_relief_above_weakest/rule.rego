# METADATA
# title: The relief device between two shut-offs is set above the weakest part
# description: |
#   The device lets shut-in liquid rise to its set pressure. What lies in the section must hold that; a
#   hose has no allowance over its working pressure.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: sections
#   scope: [liquid, relieved]
#   needs: [sections.relief_set_kpa, sections.weakest_kpa]
#   message: "The relief device between {from} and {to} opens at {need_kpa}, but {part} holds only {have_kpa}"
#   action: "Set the device no higher than the lowest rating in the section, or fit stronger parts."
#   basis:
#     - document: 29 CFR 1926.302
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(5)"
#       standing: published
#     - document: API Std 521
#       edition: "5th edition, 2007"
#       clause: "5.14.4"
#       standing: published
package rules.expansion.section_relief_above_weakest

report contains {
	"subject": s.id,
	"part": s.weakest,
	"case": "shut-in-liquid",
	"from": s.from,
	"to": s.to,
	"have_kpa": s.weakest_kpa,
	"need_kpa": s.relief_set_kpa,
} if {
	some s in input.sections
	not _window_of_law(s)
	s.liquid
	s.relieved

	# The set pressure is rounded up and the rating down: what is equal in psi may lie one apart.
	s.relief_set_kpa > s.weakest_kpa + 1
}

# 29 CFR 1910.110(b)(10)(xii) wants the relief device between shut-offs on liquid LP-gas at up to 500 psig = 3447.4 kPa,
# above the 350 psig of the hose it protects. Where that law applies another rule asks for the hose maker's word.
_window_of_law(s) if {
	s.carries_lpg
	"29 CFR 1910.110" in input.line.regimes
	s.relief_set_kpa <= 3448
}
