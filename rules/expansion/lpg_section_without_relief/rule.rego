# METADATA
# title: Liquid LP-gas can be shut in without a relief device
# description: |
#   The US rule for liquefied petroleum gas wants a hydrostatic relief valve between each pair of valves
#   that can trap the liquid, whatever the parts hold. Emptying the line by procedure does not replace
#   it.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: sections
#   scope: [liquid, carries_lpg, "!relieved", "regime=29 CFR 1910.110"]
#   needs: []
#   message: "Liquid LP-gas can be shut in between {from} and {to}, and no relief device stands between them"
#   action: "Fit a hydrostatic relief valve between the two that lets off to a safe place."
#   basis:
#     - document: 29 CFR 1910.110
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(10)(xii)"
#       standing: published
package rules.expansion.lpg_section_without_relief

report contains {"subject": s.id, "from": s.from, "to": s.to} if {
	"29 CFR 1910.110" in input.line.regimes
	some s in input.sections
	s.liquid
	s.carries_lpg
	not s.relieved
}
