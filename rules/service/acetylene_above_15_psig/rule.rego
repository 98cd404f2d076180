# METADATA
# title: Acetylene is used above 15 psig
# description: |
#   Above this pressure acetylene can decompose explosively without any air. The rule does not speak of
#   dissolved acetylene in its cylinder, nor of chemical plant designed for it.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: fluids
#   scope: ["fluid=acetylene"]
#   needs: [fluids.duty_kpa]
#   message: "{name} runs at {have_kpa}; acetylene may be used at {need_kpa} at most"
#   action: "Lower the regulator setting to 15 psig (1 bar) or less, and fit a flashback arrester."
#   basis:
#     - document: 29 CFR 1910.253
#       edition: "CFR 2015 annual edition"
#       clause: "(a)(2)"
#       standing: published
package rules.service.acetylene_above_15_psig

report contains {"subject": f.id, "name": f.name, "have_kpa": f.duty_kpa, "need_kpa": _most_kpa} if {
	some f in input.fluids
	f.fluid == "acetylene"
	f.duty_kpa > _most_kpa
}

# 15 psig = 103.4 kPa, rounded up like the duty pressure it is compared with.
_most_kpa := 104
