# METADATA
# title: A gas that is not free of oil goes through an oxygen line
# description: |
#   Oil carried by a test or purge gas stays in the line, and burns in oxygen by the heat of sudden
#   pressure alone.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: fluids
#   scope: ["role=test|flush|pad", "form=compressed-gas"]
#   needs: []
#   absent: [fluids.oil_free]
#   message: "{name} is not free of oil and goes through a line that carries oxygen"
#   action: "Use oil-free nitrogen or oil-free air. Clean the line for oxygen again before use."
#   basis:
#     - document: 29 CFR 1910.253
#       edition: "CFR 2015 annual edition"
#       clause: "(e)(5)(v), (e)(6)(iii)"
#       standing: published
#     - document: 29 CFR 1910.104
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(8)(i)"
#       standing: published
package rules.service.oily_gas_on_oxygen

report contains {"subject": f.id, "name": f.name} if {
	some f in input.fluids
	f.role in {"flush", "pad", "test"}
	f.form == "compressed-gas"
	f.oil_free == false
	some p in input.parts
	p.carries_oxygen
}
