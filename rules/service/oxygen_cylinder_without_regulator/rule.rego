# METADATA
# title: Oxygen is drawn from a cylinder without a regulator
# description: |
#   The US welding rule wants a regulator on every oxygen cylinder that is not on a manifold. Full
#   cylinder pressure bursts hoses, and its sudden rush heats what it meets.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: line
#   scope: ["regime=29 CFR 1910.253"]
#   needs: []
#   message: "The line carries compressed oxygen and the sheet shows no regulator on it"
#   action: "Fit an oxygen regulator at the cylinder, or enter the one of the manifold."
#   basis:
#     - document: 29 CFR 1910.253
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(5)(ii)(P)"
#       standing: published
package rules.service.oxygen_cylinder_without_regulator

report contains {"subject": "line"} if {
	"29 CFR 1910.253" in input.line.regimes
	some f in input.fluids
	f.fluid == "oxygen"
	f.form == "compressed-gas"
	count({p.id | some p in input.parts; p.kind == "regulator"; p.carries_oxygen}) == 0
}
